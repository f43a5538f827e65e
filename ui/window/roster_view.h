#pragma once

#include "core/storage/roster_store.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/passed_days.h"
#include "ui/roster/selection.h"
#include "ui/window/help.h"

#include <QWidget>
#include <functional>
#include <optional>

namespace core {
struct WeekSheet;
}

class QSplitter;
class QStackedWidget;
class QTabWidget;

namespace ui {

class LifterListPanel;
class ReviewPage;
class Room;
class RoomPage;
class SquadPage;
class Today;
class RosterWeekPage;
class WeekBoardPage;

/// One open roster: the lifter list beside the pages of the lifter chosen.
class RosterView final : public QWidget
{
    Q_OBJECT

public:
    RosterView(std::unique_ptr<core::RosterStore> store, Today &today, QWidget *parent = nullptr);
    ~RosterView() override;

    /// In the order of the tabs.
    [[nodiscard]] static QStringList pageNames();

    [[nodiscard]] OpenRoster &openRoster() { return m_roster; }
    [[nodiscard]] Estimates &estimates() { return m_estimates; }
    [[nodiscard]] Insights &insights() { return m_insights; }
    [[nodiscard]] Selection &selection() { return m_selection; }
    [[nodiscard]] LifterListPanel &lifters() { return *m_lifters; }
    [[nodiscard]] QTabWidget &pages() { return *m_pages; }
    [[nodiscard]] Room &room();
    /// Puts the lifter chosen into the room, or takes them out.
    void toggleInRoom();
    void showWeekBoard();
    void showReview();
    /// The roster's last step back, or done again; says whose it was where that is not seen.
    void undo();
    void redo();
    /// By its place among the tabs, from 0.
    void showPage(int index);
    /// @param paths  files to begin with, dropped or named
    void importLog(const QStringList &paths = {});
    /// @param paths  return sheets to begin with, dropped or named
    void readReturns(const QStringList &paths = {});
    void writeHandOuts();
    [[nodiscard]] HelpOn helpOn() const;
    /// Opens the preview of the week that is shown.
    void printPlan();

Q_SIGNALS:
    /// Why something that was asked for was not done.
    void said(const QString &words);
    /// Of a step that was made, undone or done again out of sight.
    void stepTold(const QString &words);
    /// The computer's clock is behind the log: what it says, once.
    void clockTold(const QString &words);

private:
    void compareClock();
    /// Another page is shown: what is half typed is settled, or the page before comes back.
    void followPage();
    /// The shown week as it is printed, with what the checks stop.
    [[nodiscard]] core::WeekSheet weekSheet() const;
    /// The same once nothing stops it, asking the coach; nothing where the coach goes back.
    [[nodiscard]] std::optional<core::WeekSheet> sheetToHandOver(QWidget *asking);
    void tellStep(const QString &pattern, const QString &step, const std::function<bool()> &go);
    [[nodiscard]] QWidget *invitation();
    void showLifterOrInvitation();

    OpenRoster m_roster;
    QString m_clockTrouble; ///< as it was told; empty = none
    Estimates m_estimates;
    PassedDays m_passedDays;
    Insights m_insights;
    Selection m_selection;
    LifterHistory m_history;
    LifterListPanel *m_lifters = nullptr;
    QTabWidget *m_pages = nullptr;
    QWidget *m_page = nullptr; ///< the one shown, once what was typed before it is settled
    WeekBoardPage *m_board = nullptr;
    ReviewPage *m_review = nullptr;
    SquadPage *m_squad = nullptr;
    RoomPage *m_room = nullptr;
    RosterWeekPage *m_rosterWeek = nullptr;
    QSplitter *m_splitter = nullptr;
    QStackedWidget *m_right = nullptr;
    QWidget *m_invitation = nullptr;
};

} // namespace ui
