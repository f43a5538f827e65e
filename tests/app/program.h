#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <gmock/gmock.h>

/// The built program, run in a folder of its own as a user would run it.
class Program : public testing::Test
{
protected:
    struct Run
    {
        int code = -1;
        QString out;
        QString err;
    };

    Run run(const QStringList &arguments, const QByteArray &input = {})
    {
        QProcess process;
        process.setWorkingDirectory(m_folder.path());
        process.start(QStringLiteral(BENCHWRIGHT_PROGRAM), arguments);
        process.write(input);
        process.closeWriteChannel();
        EXPECT_TRUE(process.waitForFinished(60'000));
        EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }

    QString path(const QString &name) const { return m_folder.filePath(name); }

    void write(const QString &name, const QByteArray &contents)
    {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(contents), contents.size());
    }

    QByteArray read(const QString &name) const
    {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        return file.readAll();
    }

    /// All names in the folder, hidden ones too.
    QStringList names() const
    {
        return QDir(m_folder.path())
            .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
    }

    /// The day that the demo rosters of the tests are of.
    static inline const QString kDay = QStringLiteral("2026-03-18");
    static inline const QByteArray kHeader =
        "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";
    static inline const QByteArray kSoundLog = kHeader
        + "Ada,2026-03-30,comp,100,5,5,8,0\n"
          "Ada,2026-03-30,comp,105,3,3,8.5,0\n"
          "Ada,2026-04-06,off_chest_pause,105,2,2,9,0\n"
          "Bo,2026-03-31,tempo_4_2_0,80,3,3,7.5,0\n";

private:
    QTemporaryDir m_folder;
};
