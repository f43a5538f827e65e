#pragma once

#include "core/storage/roster_file.h"
#include "ui/roster/open_roster.h"

#include <QCoreApplication>
#include <QDir>
#include <QSettings>
#include <QTemporaryDir>

/// A folder of its own, with settings of its own, so that a test neither reads nor changes the
/// user's.
class PrivateFolder
{
public:
    PrivateFolder()
    {
        QCoreApplication::setOrganizationName(QStringLiteral("Benchwright tests"));
        QCoreApplication::setApplicationName(QStringLiteral("tests"));
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, m_dir.path());
        QSettings().clear();
    }
    [[nodiscard]] QString path(const QString &name) const { return m_dir.filePath(name); }

private:
    QTemporaryDir m_dir;
};

/// An invented lifter, sound in every field.
inline core::Lifter inventedLifter(
    const QString &name, core::TouchStyle style = core::TouchStyle::soft)
{
    core::Lifter lifter;
    lifter.name = name;
    lifter.touchStyle = style;
    lifter.gear = core::usualGear(lifter.unit);
    return lifter;
}

/// Adds lifters to a roster file in one transaction; their ids are set.
inline void addTo(core::RosterFile &file, std::vector<core::Lifter> &lifters)
{
    core::Edit edit;
    for (core::Lifter &lifter : lifters) {
        lifter.id = file.newId<core::Lifter>();
        edit.lifters.after.push_back(lifter);
    }
    file.apply(edit);
}
