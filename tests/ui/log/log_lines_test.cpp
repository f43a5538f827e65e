#include "ui/log/log_lines.h"

#include "core/csv/catalogue_csv.h"

#include <QLocale>
#include <gtest/gtest.h>

using namespace ui;

TEST(LogLines, WhatIsAskedSaysAskedAndExpectedEffortAtThePlannedLoad)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    core::DaySet set;
    set.repsText = QStringLiteral("5");
    set.planKg = set.loadKg = 102.5;
    set.rpe = 7.0;
    set.effort = QStringLiteral("asked RPE 8, expected about 7: rounded down to the plates");
    const auto words = [&set] {
        return askedWords(set, core::builtInCatalogue(), core::Unit::kilogram);
    };
    EXPECT_EQ(words(),
        QStringLiteral("5 x 102.5 kg, asked RPE 8, expected about 7: rounded down to the plates"));
    set.loadKg = 100.0; // moved by readiness: the words were about another load
    EXPECT_EQ(words(), QStringLiteral("5 x 100 kg, RPE 7"));
    set.loadKg.reset();
    EXPECT_EQ(words(), QStringLiteral("5 reps, load open"));
}
