#include <gmock/gmock.h>

#include <QDirIterator>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QXmlStreamReader>

// Every visible word can be translated: what lupdate files under a context is looked up under it.

namespace {

const QString kRoot = QStringLiteral(SOURCE_DIR);
const QStringList kFolders{QStringLiteral("core"), QStringLiteral("ui"), QStringLiteral("app")};

/// Path below the root and contents of each source file.
QMap<QString, QString> sources()
{
    QMap<QString, QString> found;
    for (const QString &folder : kFolders) {
        QDirIterator files(kRoot + u'/' + folder, {QStringLiteral("*.cpp"), QStringLiteral("*.h")},
            QDir::Files, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            if (file.open(QIODevice::ReadOnly))
                found.insert(QDir(kRoot).relativeFilePath(file.fileName()),
                    QString::fromUtf8(file.readAll()));
        }
    }
    return found;
}

/// "ui::LogPage" and the like.
QSet<QString> classesWithTr()
{
    static const QRegularExpression kClass(QStringLiteral("class (\\w+)[^;{]*\\{\\s*Q_OBJECT\\b"));
    QSet<QString> found;
    const QMap<QString, QString> all = sources();
    for (auto file = all.begin(); file != all.end(); ++file)
        for (auto it = kClass.globalMatch(file.value()); it.hasNext();)
            found.insert(
                file.key().section(u'/', 0, 0) + QStringLiteral("::") + it.next().captured(1));
    return found;
}

} // namespace

TEST(Words, AreLookedUpWhereLupdateFilesThem)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("words.ts"));
    QProcess lupdate;
    lupdate.setWorkingDirectory(kRoot);
    lupdate.start(QStringLiteral(LUPDATE),
        QStringList{QStringLiteral("-silent"), QStringLiteral("-locations"),
            QStringLiteral("absolute"), QStringLiteral("-I"), kRoot}
            << kFolders << QStringLiteral("-ts") << path);
    ASSERT_TRUE(lupdate.waitForFinished(120'000)) << qPrintable(lupdate.errorString());
    EXPECT_EQ(lupdate.exitCode(), 0);
    EXPECT_EQ(lupdate.readAllStandardError().toStdString(), ""); // such as "lacks Q_OBJECT"

    const QSet<QString> classes = classesWithTr();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QString context;
    int words = 0;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement())
            continue;
        if (xml.name() == u"name") {
            context = xml.readElementText();
            EXPECT_TRUE(kFolders.contains(context) || classes.contains(context))
                << qPrintable(context) << " is neither a namespace nor a class with a tr()";
        } else if (xml.name() == u"location") {
            const QString place = QDir(kRoot).relativeFilePath(
                QDir(folder.path())
                    .absoluteFilePath(
                        xml.attributes().value(QLatin1String("filename")).toString()));
            EXPECT_EQ(place.section(u'/', 0, 0), context.section(QStringLiteral("::"), 0, 0))
                << qPrintable(place) << ":"
                << qPrintable(xml.attributes().value(QLatin1String("line")).toString());
            ++words;
        }
    }
    EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
    EXPECT_GT(words, 1000);
}

TEST(Words, AreSaidByOneIdiom)
{
    static const QRegularExpression kOtherWays(
        QStringLiteral("QCoreApplication::translate|Q_DECLARE_TR_FUNCTIONS"));
    // What is no literal is not found by lupdate, unless it is marked somewhere in the file.
    static const QRegularExpression kNoLiteral(QStringLiteral("\\btr\\(\\s*[^\"\\s)]"));
    const QMap<QString, QString> all = sources();
    for (auto file = all.begin(); file != all.end(); ++file) {
        EXPECT_EQ(file.value().contains(kOtherWays), file.key().endsWith(QStringLiteral("/text.h")))
            << qPrintable(file.key());
        EXPECT_FALSE(file.value().contains(kNoLiteral)
            && !file.value().contains(QStringLiteral("QT_TRANSLATE_NOOP")))
            << qPrintable(file.key());
    }
}
