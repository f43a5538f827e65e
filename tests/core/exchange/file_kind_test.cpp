#include "core/exchange/file_kind.h"

#include "core/exchange/estimates_csv.h"
#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"
#include "core/exchange/return_sheet.h"

#include <QBuffer>
#include <gtest/gtest.h>

using namespace core;

namespace {

FileKind kindOf(const QByteArray &text)
{
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    return fileKind(buffer);
}

} // namespace

TEST(FileKind, IsThatWhoseColumnsTheHeaderNames)
{
    const auto header = [](const QStringList &columns, QChar separator) {
        return columns.join(separator).toUtf8() + '\n';
    };
    for (const QChar separator : {u',', u';', u'\t'}) {
        EXPECT_EQ(kindOf(header(logColumns(), separator)), FileKind::log);
        EXPECT_EQ(kindOf(header(peopleColumns(), separator)), FileKind::people);
        EXPECT_EQ(kindOf(header(estimatesColumns(), separator)), FileKind::estimates);
        EXPECT_EQ(kindOf(header(returnColumns(), separator)), FileKind::returnSheet);
    }
    EXPECT_EQ(kindOf(" lifter , sex ,shoe size\n"), FileKind::people) << "two columns are enough";
    EXPECT_EQ(kindOf("sex,shoe size,hat size\n"), FileKind::unknown) << "one is not";
}

TEST(FileKind, ARosterIsKnownByTheMarkOfItsDatabase)
{
    // The SQLite file format, section 1.3: "SQLite format 3" with its closing NUL.
    EXPECT_EQ(kindOf(QByteArray("SQLite format 3\0rest", 20)), FileKind::roster);
    EXPECT_EQ(kindOf("SQLite format 3 is a format\n"), FileKind::unknown);
}

TEST(FileKind, WhatIsNoTableIsUnknownAndWhatHoldsNothingEmpty)
{
    EXPECT_EQ(kindOf(""), FileKind::empty);
    EXPECT_EQ(kindOf("\n\n"), FileKind::unknown);
    EXPECT_EQ(kindOf("Dear coach,\n"), FileKind::unknown);
    EXPECT_EQ(kindOf("lifter,\"sex\n"), FileKind::unknown) << "a header that cannot be read";
}
