#include "tests/core/storage/edit_maker.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QSqlRecord>

using namespace core;

namespace {

/// Every row of every table, read past the program.
QStringList dump(const QString &path)
{
    QStringList rows;
    {
        QSqlDatabase db =
            QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("dump"));
        db.setDatabaseName(path);
        EXPECT_TRUE(db.open());
        QStringList tables = db.tables();
        tables.sort();
        for (const QString &table : tables) {
            QSqlQuery query(db);
            EXPECT_TRUE(
                query.exec(QStringLiteral("SELECT * FROM \"%1\" ORDER BY 1, 2").arg(table)));
            while (query.next()) {
                QStringList fields{table};
                for (int i = 0; i < query.record().count(); ++i)
                    fields << (query.isNull(i) ? QStringLiteral("NULL")
                                               : query.value(i).toString());
                rows << fields.join(u'|');
            }
        }
    }
    QSqlDatabase::removeDatabase(QStringLiteral("dump"));
    return rows;
}

} // namespace

TEST_F(RosterFixture, EditsAndThenTheirInversesLeaveTheRosterAsItWas)
{
    RosterFile file = RosterFile::create(path);
    EditMaker maker(file);
    // One roster for all sequences, since each has to leave it as it was.
    EXPECT_TRUE(rc::check([&] {
        std::vector<Edit> done;
        std::vector<Contents> pictures{contentsOf(file)};
        for (int steps = *rc::gen::inRange(1, 15); steps > 0; --steps) {
            done.push_back(maker.next());
            file.apply(done.back());
            pictures.push_back(contentsOf(file));
        }
        while (!done.empty()) {
            RC_ASSERT(contentsOf(file) == pictures.back());
            file.apply(inverse(done.back()));
            done.pop_back();
            pictures.pop_back();
        }
        RC_ASSERT(contentsOf(file) == pictures.front());
    }));
}

// Whoever holds rows and carries out what a store tells holds what reading again would give.
TEST_F(RosterFixture, RowsThatAreHeldFollowWhatTheStoreTells)
{
    RosterFile file = RosterFile::create(path);
    EditMaker maker(file);
    std::vector<Lifter> lifters;
    std::vector<LoggedSession> sessions;
    std::vector<CheckIn> checkIns;
    std::vector<Block> blocks;
    const auto follow = [&](const RosterChange &change) {
        const auto all = [](const auto &) { return true; };
        carryOut(lifters, change.rows<Lifter>(), all);
        carryOut(sessions, change.rows<LoggedSession>(), all);
        carryOut(checkIns, change.rows<CheckIn>(), all);
        carryOut(blocks, change.rows<Block>(), all);
    };
    const auto byId = [](auto rows) {
        std::sort(
            rows.begin(), rows.end(), [](const auto &a, const auto &b) { return a.id < b.id; });
        return rows;
    };
    const auto apply = [&](const Edit &edit) {
        file.apply(edit);
        follow(changeBy(edit));
    };
    std::vector<Edit> done;
    EXPECT_TRUE(rc::check([&] {
        if (!done.empty() && *rc::gen::inRange(0, 4) == 0) {
            apply(inverse(done.back()));
            done.pop_back();
        } else {
            done.push_back(maker.next());
            apply(done.back());
        }
        RC_ASSERT(byId(lifters) == byId(file.lifters()));
        RC_ASSERT(byId(sessions) == byId(file.sessions()));
        RC_ASSERT(byId(checkIns) == byId(file.checkIns()));
        RC_ASSERT(byId(blocks) == byId(file.blocks()));
    }));
}

TEST_F(RosterFixture, AThousandEditsUndoneAndRedoneLeaveTheDumpsAsTheyWere)
{
    constexpr int kEdits = 1000;
    RosterFile file = RosterFile::create(path);
    const QStringList first = dump(path);
    EditMaker maker(file);
    std::vector<Edit> done;
    // Each of the hundred draws goes on where the one before it ended.
    EXPECT_TRUE(rc::check([&] {
        for (int left = kEdits / 100; left > 0;) {
            const Edit edit = maker.next();
            if (edit.isEmpty())
                continue;
            file.apply(edit);
            done.push_back(edit);
            --left;
        }
    }));
    EXPECT_EQ(int(done.size()), kEdits);
    const QStringList last = dump(path);
    EXPECT_NE(first, last);
    for (auto edit = done.rbegin(); edit != done.rend(); ++edit)
        file.apply(inverse(*edit));
    EXPECT_EQ(dump(path), first);
    for (const Edit &edit : done)
        file.apply(edit);
    EXPECT_EQ(dump(path), last);
}
