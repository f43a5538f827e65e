#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/importing/import_dialog.h"
#include "ui/window/roster_view.h"

#include <QProgressBar>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

TEST(Closing, AWindowThatIsClosedWhileALogIsReadLeavesTheRosterAsItWas)
{
    const PrivateFolder folder;
    const QString path = folder.path(u"club.benchwright"_s);
    QFile log(folder.path(u"log.csv"_s));
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    log.write("lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n"
        + QByteArray("Ada,2026-03-30,comp,100,5,5,8,0\n").repeated(500'000));
    log.close();
    SetClock clock;
    {
        ui::RosterView view(
            std::make_unique<core::RosterFile>(core::RosterFile::create(path)), clock.today);
        view.importLog({log.fileName()});
        auto *dialog = view.findChild<ui::ImportDialog *>();
        ASSERT_NE(dialog, nullptr);
        QSignalSpy moved(dialog->findChild<QProgressBar *>(), &QProgressBar::valueChanged);
        ASSERT_TRUE(moved.wait(10'000)) << "it is under way";
    } // the reading takes ids of the roster, and has to end before it
    EXPECT_THAT(core::RosterFile::open(path, clock.today.now()).lifters(), testing::IsEmpty());
}
