#pragma once

#include <QWidget>

class QLabel;
class QStackedWidget;
class QTableWidget;

namespace ui {

class Insights;
class RosterSession;

/// What carried over to the competition bench in the whole roster: a table with intervals and
/// words.
class CarryOverPage final : public QWidget
{
    Q_OBJECT

public:
    CarryOverPage(RosterSession &session, Insights &insights, QWidget *parent = nullptr);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void refresh();

    RosterSession &m_session;
    Insights &m_insights;
    QStackedWidget *m_stack;
    QTableWidget *m_table;
    QLabel *m_nothing;
};

} // namespace ui
