#pragma once

#include <QWidget>

class QLabel;
class QStackedWidget;
class QTableWidget;

namespace ui {

class Insights;
class OpenRoster;

/// What carried over to the competition bench in the whole roster: a table with intervals and
/// words.
class CarryOverPage final : public QWidget
{
    Q_OBJECT

public:
    CarryOverPage(OpenRoster &roster, Insights &insights, QWidget *parent = nullptr);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void refresh();

    OpenRoster &m_roster;
    Insights &m_insights;
    QStackedWidget *m_stack;
    QTableWidget *m_table;
    QLabel *m_nothing;
};

} // namespace ui
