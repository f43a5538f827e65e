#include "ui/log/log_table_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gmock/gmock.h>

using namespace ui;

namespace {

LogLine line(const QString &variation, LineState state = LineState::open)
{
    LogLine line;
    line.variation = variation;
    line.asked = QStringLiteral("5 x 100 kg");
    line.state = state;
    line.said = QStringLiteral("words");
    return line;
}

class LogTableModelTest : public testing::Test
{
protected:
    QString shown(int row, LogTableModel::Column column) const
    {
        return model.index(row, column).data().toString();
    }

    LogTableModel model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
    const LogLine bench = line(QStringLiteral("Bench"));
    const LogLine pause = line(QStringLiteral("Pause bench"));
};

} // namespace

TEST_F(LogTableModelTest, LinesComeAndGoAtTheEndWhileTheOthersStay)
{
    const QSignalSpy inserted(&model, &LogTableModel::rowsInserted);
    const QSignalSpy removed(&model, &LogTableModel::rowsRemoved);
    const QSignalSpy reset(&model, &LogTableModel::modelReset);
    model.setLines({bench});
    model.setLines({bench, pause, bench});
    ASSERT_EQ(inserted.count(), 2);
    EXPECT_EQ(inserted[1][1], 1);
    EXPECT_EQ(inserted[1][2], 2);
    EXPECT_EQ(model.rowCount(), 3);
    model.setLines({pause});
    ASSERT_EQ(removed.count(), 1);
    EXPECT_EQ(removed[0][1], 1);
    EXPECT_EQ(shown(0, LogTableModel::variation), QStringLiteral("Pause bench"));
    model.setLines({});
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_EQ(reset.count(), 0);
}

TEST_F(LogTableModelTest, TheSameLinesAreNoNews)
{
    model.setLines({bench, pause});
    const QSignalSpy changed(&model, &LogTableModel::dataChanged);
    model.setLines({bench, pause});
    EXPECT_EQ(changed.count(), 0);
    model.setLines({bench, line(QStringLiteral("Pause bench"), LineState::missed)});
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(LogTableModelTest, NumbersTheSetsAndMarksWhatBecameOfThem)
{
    model.setLines({line(QStringLiteral("Bench"), LineState::asPlanned), bench});
    EXPECT_EQ(shown(1, LogTableModel::number), QStringLiteral("2"));
    EXPECT_EQ(shown(0, LogTableModel::said), QStringLiteral("\u2713 words"));
    EXPECT_EQ(shown(1, LogTableModel::said), QStringLiteral("words"));
    EXPECT_EQ(model.headerData(LogTableModel::asked, Qt::Horizontal, Qt::DisplayRole),
        QStringLiteral("Planned"));
}
