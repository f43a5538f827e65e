#include "core/csv/catalogue_csv.h"

#include "core/csv/csv_table.h"
#include "core/domain/storage_error.h"
#include "core/domain/text.h"

#include <QFile>
#include <array>

namespace core {

namespace {

enum At {
    code,
    name,
    lift,
    competition,
    serves,
    stance,
    purpose,
    lowering,
    pause,
    lifting,
    repsLow,
    repsHigh,
    ratio,
    spread,
    source,
    repCost,
    fatigue,
    work,
    assistance,
    usualPercent,
    whenToUse,
    cautions
};

constexpr std::array kColumns{Column{"code", true}, Column{"name", true}, Column{"lift", true},
    Column{"competition", true}, Column{"serves", true}, Column{"stance", true},
    Column{"purpose", true}, Column{"tempo_lowering", true}, Column{"tempo_pause", true},
    Column{"tempo_lifting", true}, Column{"reps_low", true}, Column{"reps_high", true},
    Column{"ratio", true}, Column{"ratio_spread", true}, Column{"ratio_source", true},
    Column{"rep_cost", true}, Column{"fatigue", true}, Column{"work", true}, Column{"assistance"},
    Column{"usual_percent"}, Column{"when_to_use", true}, Column{"cautions", true}};

/// The enumerator that a cell names, or a problem that lists what may stand there.
template <class Read> auto enumerator(CsvTable &table, At column, Read read, const QString &choices)
{
    auto value = read(table.text(column));
    if (!value)
        table.complain(column,
            Text::tr("\"%1\" is none of the words that may stand here.").arg(table.text(column)),
            Text::tr("Write one of: %1.").arg(choices));
    return value.value_or(typename decltype(value)::value_type{});
}

} // namespace

std::vector<Variation> readCatalogueCsv(QIODevice &device, const QString &file, ProblemList &found)
{
    std::vector<Variation> variations;
    CsvTable table(device, file, kColumns, found);
    while (table.next()) {
        Variation v;
        v.id = {qint64(variations.size()) + 1};
        v.code = table.text(code);
        v.name = table.text(name);
        v.lift =
            enumerator(table, lift, fromFileWord<Lift>, QStringLiteral("bench, squat, deadlift"));
        v.competition = table.wholeNumber(competition).value_or(0) != 0;
        v.serves =
            enumerator(table, serves, fromFileWord<Serves>, QStringLiteral("soft, sinking, both"));
        v.stance = table.text(stance);
        v.purpose = table.text(purpose);
        v.tempo.lowering = table.wholeNumber(lowering).value_or(0);
        v.tempo.pause = table.wholeNumber(pause).value_or(0);
        v.tempo.lifting = table.wholeNumber(lifting).value_or(0);
        v.repsLow = table.wholeNumber(repsLow).value_or(1);
        v.repsHigh = table.wholeNumber(repsHigh).value_or(1);
        v.ratio = table.number(ratio).value_or(1.0);
        v.ratioSpread = table.number(spread).value_or(0.0);
        v.ratioSource = table.text(source);
        v.repCost = table.number(repCost).value_or(1.0);
        v.fatigue = enumerator(
            table, fatigue, fromFileWord<Fatigue>, QStringLiteral("low, moderate, high"));
        v.work = enumerator(table, work, areaWorkFromFileWords,
            Text::tr("every area with not, some or much, such as %1").arg(fileWords(AreaWork())));
        v.assistance = table.wholeNumber(assistance).value_or(0) != 0;
        v.usualPercent = table.number(usualPercent);
        v.whenToUse = table.text(whenToUse);
        v.cautions = table.text(cautions);
        for (const QString &wrong : problems(v))
            table.complain(code, wrong, Text::tr("Mend the row of %1.").arg(v.code));
        variations.push_back(std::move(v));
    }
    return variations;
}

const std::vector<Variation> &builtInCatalogue()
{
    static const std::vector<Variation> kCatalogue = [] {
        QFile file(QStringLiteral(":/catalogue/variations.csv"));
        ProblemList found;
        std::vector<Variation> all;
        if (file.open(QIODevice::ReadOnly))
            all = readCatalogueCsv(file, file.fileName(), found);
        if (all.empty() || !found.isEmpty())
            throw StorageError(
                Text::tr("The program lacks its variation catalogue; install it again."),
                found.isEmpty() ? QString() : oneLine(found.items().front()));
        return all;
    }();
    return kCatalogue;
}

} // namespace core
