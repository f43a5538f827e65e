#pragma once

#include "core/domain/ids.h"
#include "core/domain/week.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <vector>

namespace core {

inline constexpr int kMostBlockWeeks = 26;

/// Some weeks of one lifter's plan with one purpose. The cards on its days are the block's; blocks
/// of a lifter do not overlap.
struct Block
{
    BlockId id;
    LifterId lifter;
    QString name;
    QString purpose;              ///< what the weeks are for, in the coach's words; may be empty
    QDate start;                  ///< its first day; a week of the block starts on this weekday
    int weeks = 4;                ///< 1 to kMostBlockWeeks
    std::vector<int> deloadWeeks; ///< 1 = the first; ascending
    TemplateId templateId;        ///< version of the template that was laid on it last; often none

    /// Its last day.
    [[nodiscard]] QDate end() const { return start.addDays(kWeekDays * weeks - 1); }
    [[nodiscard]] bool contains(QDate day) const { return day >= start && day <= end(); }

    friend bool operator==(const Block &, const Block &) = default;
};

/// The rules that a block and a template share.
[[nodiscard]] QStringList weekProblems(int weeks, const std::vector<int> &deloadWeeks);

/// What is wrong with the block alone, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const Block &block);

} // namespace core
