#pragma once

#include "core/domain/ids.h"
#include "ui/board/board_keys.h"

#include <QDate>
#include <QObject>
#include <vector>

namespace ui {

class WeekGrid;
class WeekPlan;

/// Carries out what keys and menu of the week grid ask for: on the plan, and where the focus goes
/// and what is chosen afterwards.
class WeekCommands : public QObject
{
    Q_OBJECT

public:
    WeekCommands(WeekPlan &plan, WeekGrid &grid);

    /// Pastes what was asked about, as it was then.
    void pasteAsked();

Q_SIGNALS:
    /// A variation is wanted where the grid would add it; `typed` begins the search.
    void addRequested(const QString &typed);
    /// Why something was not done, or not all of it.
    void said(const QString &words);
    /// A load that is to be pasted is far above the max: pasteAsked() if it is meant.
    void asked(const QString &words);
    /// A copied day is to be pasted onto lifters; see WeekPlan::copied().
    void pasteOntoWanted(QDate day);

private:
    void run(const BoardCommand &command);
    void copy() const;
    void paste(const QString &text, BoardPlace place, bool isMeant);
    void copyDay();
    void pasteDay();
    void pasteOntoLifters();
    void choosePasted(const std::vector<core::CardId> &cards);

    WeekPlan &m_plan;
    WeekGrid &m_grid;
    QString m_asked; ///< the text asked about
    BoardPlace m_askedFor;
};

} // namespace ui
