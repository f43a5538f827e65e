#include "tests/ui/tour/eyes.h"
#include "tests/ui/translation/foreign_roster.h"
#include "tests/ui/translation/pseudo_translator.h"
#include "tests/ui/translation/visible_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSet>
#include <gmock/gmock.h>

namespace tests {

namespace {

/// For every test of the program: words that are made once stay as they are made.
class Abroad final : public testing::Environment
{
public:
    void SetUp() override
    {
        QLocale::setDefault(QLocale(QLocale::Greek));
        QCoreApplication::installTranslator(&m_translator);
    }

private:
    PseudoTranslator m_translator;
};

[[maybe_unused]] const auto *const kAbroad = testing::AddGlobalTestEnvironment(new Abroad);

/// Under a translation of all words, in a foreign locale and with a foreign roster: fails for each
/// text that no translator can reach.
class TranslatedEyes final : public Eyes
{
public:
    [[nodiscard]] QString said(const QString &english) const override { return pseudo(english); }
    [[nodiscard]] QString written(const QString &text) const override { return foreign(text); }
    void makeRoster(const QString &path, QDate today) const override
    {
        makeForeignRoster(path, today);
    }
    void makeEmptyRoster(const QString &path) const override
    {
        static_cast<void>(tests::makeEmptyRoster(path));
    }

    void look(QWidget &widget, const QString &state, const QStringList &data) override
    {
        expectNoLatin(visibleText(widget), state, data);
    }
    void read(const QString &text, const QString &state, const QStringList &data) override
    {
        expectNoLatin({{QStringLiteral("text"), text}}, state, data);
    }

private:
    void expectNoLatin(
        const std::vector<VisibleText> &visible, const QString &state, const QStringList &data)
    {
        for (const QString &text : latinText(visible, data))
            if (!m_said.contains(text)) {
                m_said.insert(text);
                ADD_FAILURE() << qPrintable(state) << ": " << qPrintable(text);
            }
    }

    QSet<QString> m_said;
};

} // namespace

std::unique_ptr<Eyes> makeEyes()
{
    return std::make_unique<TranslatedEyes>();
}

} // namespace tests
