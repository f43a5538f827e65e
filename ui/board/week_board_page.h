#pragma once

#include <QWidget>

class QStackedWidget;

namespace ui {

class Estimates;
class RosterSession;
class Selection;
class VariationShelf;
class WeekBoard;
class WeekHeader;
class WeekPlan;

/// The week board of the selected lifter with the variation shelf beside it.
class WeekBoardPage : public QWidget
{
    Q_OBJECT

public:
    WeekBoardPage(RosterSession &session, Estimates &estimates, Selection &selection,
        QWidget *parent = nullptr);

private:
    void showPlan();
    void beginAdding(const QString &typed);

    RosterSession &m_session;
    WeekPlan *m_plan;
    QStackedWidget *m_stack;
    WeekHeader *m_header;
    WeekBoard *m_board;
    VariationShelf *m_shelf;
};

} // namespace ui
