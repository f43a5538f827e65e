#include "tests/ui/translation/pseudo_translator.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gmock/gmock.h>

namespace tests {

QString pseudo(const QString &text)
{
    static const QRegularExpression kDateFormat(QStringLiteral("^[dMy ]+$"));
    static const QRegularExpression kKept(QStringLiteral("%L?\\d+|%L?n|<[^<>]*>|&[a-z]+;"));
    if (kDateFormat.match(text).hasMatch())
        return text;
    QString said = text;
    for (QChar &c : said)
        if (c >= u'a' && c <= u'z')
            c = QChar(u'а' + (c.unicode() - u'a'));
        else if (c >= u'A' && c <= u'Z')
            c = QChar(u'А' + (c.unicode() - u'A'));
    for (auto it = kKept.globalMatch(text); it.hasNext();) {
        const QRegularExpressionMatch kept = it.next();
        said.replace(kept.capturedStart(), kept.capturedLength(), kept.captured());
    }
    return said;
}

PseudoTranslator::PseudoTranslator()
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("words.ts")));
    QProcess lupdate;
    lupdate.setWorkingDirectory(QStringLiteral(SOURCE_DIR));
    lupdate.start(QStringLiteral(LUPDATE),
        {QStringLiteral("-silent"), QStringLiteral("-I"), QStringLiteral("."),
            QStringLiteral("core"), QStringLiteral("ui"), QStringLiteral("-ts"), file.fileName()});
    EXPECT_TRUE(lupdate.waitForFinished(120'000)) << qPrintable(lupdate.errorString());
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));

    QXmlStreamReader xml(&file);
    QStringList message(3);
    while (!xml.atEnd()) {
        const QXmlStreamReader::TokenType token = xml.readNext();
        if (token == QXmlStreamReader::EndElement && xml.name() == u"message")
            m_messages.insert(message);
        if (token != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == u"name")
            message[0] = xml.readElementText();
        else if (xml.name() == u"source")
            message = {message[0], xml.readElementText(), {}};
        else if (xml.name() == u"comment")
            message[2] = xml.readElementText();
    }
    EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
    EXPECT_GT(m_messages.size(), 1000);
}

QString PseudoTranslator::translate(
    const char *context, const char *source, const char *disambiguation, int) const
{
    const QString text = QString::fromUtf8(source);
    if (text == QStringLiteral("en"))
        return QStringLiteral("el"); // the code of the language that is spoken here
    const bool isQts = *context == 'Q';
    const bool isFound =
        m_messages.contains({QString::fromUtf8(context), text, QString::fromUtf8(disambiguation)});
    return isQts || isFound ? pseudo(text) : QString();
}

} // namespace tests
