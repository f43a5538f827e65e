#pragma once

#include "core/csv/problem.h"
#include "core/domain/lifter.h"

#include <QStringList>
#include <optional>
#include <stop_token>
#include <vector>

class QIODevice;

/// The lifters as a file, one line a lifter: `lifter,sex,bodyweight_kg` and optionally
/// `birth_year`, `training_since` (a date), `touch_style` (soft, sinking, undecided) and `unit`
/// (kg, lb; of the screen, the file is in kg). `sex` is f or m. Every field but the name may be
/// blank: it leaves what the roster knows.
namespace core {

struct PersonRow
{
    int line = 0;
    QString lifter;
    std::optional<Sex> sex;
    std::optional<double> bodyweightKg;
    std::optional<int> birthYear;
    std::optional<QDate> trainingSince;
    std::optional<TouchStyle> touchStyle;
    std::optional<Unit> unit;
};

struct PeopleTable
{
    QString file;
    std::vector<PersonRow> rows; ///< as with LogTable: not to be used while there are problems
    ProblemList problems;
};

/// Names of all columns.
[[nodiscard]] QStringList peopleColumns();

/// Throws StorageError when the device fails.
/// @param today  nobody is born in a later year
/// @param stop  ends the reading; the table is of no use then
[[nodiscard]] PeopleTable readPeople(
    QIODevice &device, const QString &file, QDate today, const std::stop_token &stop = {});

/// The lifters as such a file, all columns.
[[nodiscard]] QByteArray writePeople(const std::vector<Lifter> &lifters);

} // namespace core
