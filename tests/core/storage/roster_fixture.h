#pragma once

#include "core/domain/storage_error.h"
#include "core/storage/roster_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <map>

inline const QDateTime kNow(QDate(2026, 11, 25), QTime(12, 30));

/// A roster in a folder of its own.
class RosterFixture : public testing::Test
{
protected:
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("team.benchwright"));

    /// Bytes of every file in the folder by name, what lies beside the roster included.
    [[nodiscard]] std::map<QString, QByteArray> bytesOfFolder() const
    {
        std::map<QString, QByteArray> bytes;
        for (const QString &name :
            QDir(folder.path()).entryList(QDir::Files | QDir::Hidden | QDir::System)) {
            QFile file(folder.filePath(name));
            if (file.open(QIODevice::ReadOnly))
                bytes[name] = file.readAll();
        }
        return bytes;
    }
};

/// The words of the StorageError that `action` throws; "nothing thrown" when it does not.
template <class Action> QString wordsOf(Action action)
{
    try {
        action();
    } catch (const core::StorageError &e) {
        return e.words();
    }
    return QStringLiteral("nothing thrown");
}

MATCHER_P(Says, part, "")
{
    *result_listener << "says: " << arg.toStdString();
    return arg.contains(QString::fromUtf8(part));
}

inline core::Lifter lifterNamed(core::RosterFile &file, const QString &name)
{
    core::Lifter lifter;
    lifter.id = file.newId<core::Lifter>();
    lifter.name = name;
    lifter.gear = core::usualGear(core::Unit::kilogram);
    return lifter;
}

inline core::Card cardOn(core::RosterFile &file, core::LifterId lifter, QDate day, int position)
{
    core::Card card;
    card.id = file.newId<core::Card>();
    card.lifter = lifter;
    card.day = day;
    card.position = position;
    card.variation = {1};
    card.setLine = QStringLiteral("4x3 @8");
    return card;
}

inline core::LoggedSession sessionOn(core::RosterFile &file, core::LifterId lifter, QDate day)
{
    core::LoggedSession session;
    session.id = file.newId<core::LoggedSession>();
    session.lifter = lifter;
    session.day = day;
    core::SetEntry set;
    set.variation = {1};
    set.loadKg = 100.0;
    set.repsDone = 3;
    session.sets = {set, set};
    return session;
}

/// All rows of a roster.
struct Contents
{
    std::vector<core::Lifter> lifters;
    std::vector<core::Variation> variations;
    std::vector<core::Card> cards;
    std::vector<core::LoggedSession> sessions;
    std::vector<core::CheckIn> checkIns;
    std::vector<core::BlockTemplate> templates;
    std::vector<core::Block> blocks;
    std::vector<core::Waiver> waivers;
    std::vector<core::GivenDay> given;

    friend bool operator==(const Contents &, const Contents &) = default;
};

inline Contents contentsOf(const core::RosterFile &file)
{
    Contents all{file.lifters(), file.variations(), file.cards(QDate(1, 1, 1), QDate(9999, 12, 31)),
        file.sessions(), file.checkIns(), file.templates(), file.blocks(), {},
        file.given(QDate(1, 1, 1), QDate(9999, 12, 31))};
    for (const core::Lifter &lifter : all.lifters)
        for (core::Waiver &waiver : file.waivers(lifter.id))
            all.waivers.push_back(std::move(waiver));
    return all;
}
