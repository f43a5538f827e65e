#include "core/domain/units.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;

TEST(Units, PoundIsTheInternationalAvoirdupoisPound)
{
    // International Yard and Pound Agreement 1959: 1 lb = 0.45359237 kg exactly.
    EXPECT_DOUBLE_EQ(toKg(1.0, Unit::pound), 0.45359237);
    EXPECT_NEAR(fromKg(100.0, Unit::pound), 220.462262, 1e-6);
    EXPECT_DOUBLE_EQ(toKg(fromKg(82.5, Unit::pound), Unit::pound), 82.5);
}

TEST(Units, LoadsDropTrailingZerosAndFollowTheLocale)
{
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(formatLoad(102.5, Unit::kilogram), QStringLiteral("102,5 kg"));
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(formatLoad(102.5, Unit::kilogram), QStringLiteral("102.5 kg"));
    EXPECT_EQ(formatLoad(100.0, Unit::kilogram), QStringLiteral("100 kg"));
    EXPECT_EQ(formatLoad(101.25, Unit::kilogram), QStringLiteral("101.25 kg"));
    EXPECT_EQ(formatLoad(101.254, Unit::kilogram), QStringLiteral("101.25 kg"));
    EXPECT_EQ(formatLoad(toKg(225, Unit::pound), Unit::pound), QStringLiteral("225 lb"));
}

TEST(Units, LoadsAreRoundedToThePlacesAskedForAndNotGrouped)
{
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(formatLoadNumber(1234.0, Unit::kilogram), QStringLiteral("1234"));
    EXPECT_EQ(formatLoadNumber(99.996, Unit::kilogram), QStringLiteral("100"));
    EXPECT_EQ(formatLoadNumber(99.994, Unit::kilogram), QStringLiteral("99.99"));
    EXPECT_EQ(formatLoadNumber(102.5, Unit::kilogram, 0), QStringLiteral("103"));
    EXPECT_EQ(formatLoadNumber(102.44, Unit::kilogram, 1), QStringLiteral("102.4"));
    EXPECT_EQ(formatLoadNumber(102.04, Unit::kilogram, 1), QStringLiteral("102"));
    EXPECT_EQ(formatLoadNumber(102.125, Unit::kilogram, 3), QStringLiteral("102.125"));
    EXPECT_EQ(formatLoad(100.0, Unit::pound, 1), QStringLiteral("220.5 lb"));
}
