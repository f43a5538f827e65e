#pragma once

#include "core/advice/open_stops.h"
#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/watch.h"
#include "core/loads/given_loads.h"
#include "core/strength/readiness_effect.h"
#include "ui/print/paper.h"

#include <QDateTime>
#include <QStringList>
#include <functional>
#include <span>
#include <vector>

namespace core {
class RosterReader;
}

namespace ui {

/// Which files a lifter gets.
struct HandOutKinds
{
    bool page = true; ///< for the phone, core/exchange/hand_out.h
    bool pdf = false;
    bool calendar = false;

    [[nodiscard]] int count() const { return int(page) + int(pdf) + int(calendar); }
    friend bool operator==(const HandOutKinds &, const HandOutKinds &) = default;
};

/// Everything that hand-outs are written from, as copied values: the writing may run on any thread.
struct HandOutBatch
{
    std::vector<core::Lifter> lifters;
    std::vector<core::Variation> variations;
    std::vector<core::Card> cards;       ///< of the lifters and the week; others do no harm
    std::vector<core::GivenDay> given;   ///< the same
    std::vector<core::CheckIn> checkIns; ///< as far as they bear on the week: what hurts is marked
    std::map<core::LifterId, std::vector<core::LoggedSession>> sessions; ///< for the plan checks
    std::vector<core::Waiver> waivers; ///< what the coach has accepted of their findings
    /// Null where there is none.
    std::function<const core::LiftEstimate *(core::LifterId, core::Lift)> estimateOf;
    std::map<core::LifterId, strength::ReadinessEffect> readiness; ///< as far as it is known
    QDate monday;
    HandOutKinds kinds;
    PaperSize paper = PaperSize::a4;
    QString folder; ///< is made where it is not there
    QDate today;
    /// How what is written is given; nothing in it for a draft, which gives nothing.
    std::optional<core::Giving> giving;
    bool anew = false; ///< days ahead that were given already are worked out once more
    QDateTime now;

    /// Takes these lifters, their log and check-ins, the catalogue, the week's cards, what was
    /// given for it and what was accepted in it. Throws StorageError.
    void takeFrom(const core::RosterReader &roster, std::span<const core::LifterId> who);
};

struct HandOutSummary
{
    QStringList files;                 ///< paths, each of them whole
    std::vector<core::GivenDay> given; ///< by what is written, to be stored
    QStringList withoutPlan;           ///< lifters who have nothing in this week
    /// What has to be accepted before anything is given: then nothing was written. A draft has them
    /// printed.
    std::vector<core::OpenStop> stops;
    QString failure; ///< why it ended early, in words; empty = it did not
    bool cancelled = false;
};

/// Writes the files, unless it would give what the plan checks stop. Each is written under another
/// name and moved to its own when it is whole, so that no lifter gets half a plan, whatever
/// happens; when stopped, it ends before the next lifter. Takes a QGuiApplication for PDFs.
[[nodiscard]] HandOutSummary writeHandOuts(
    const HandOutBatch &batch, const core::Watch &watch = {});

/// In words, a line each.
[[nodiscard]] QStringList summaryLines(const HandOutSummary &summary);

} // namespace ui
