#pragma once

#include <QSet>
#include <QTranslator>

namespace tests {

/// The text as a translator might write it who knows no Latin letter: each is put into Cyrillic,
/// one for one, so that %1, mnemonics, tags, entities and line breaks stay what they are. A text of
/// a date format's letters alone stays as it is.
[[nodiscard]] QString pseudo(const QString &text);

/// Translates what lupdate finds in the sources, under the context that it finds it in, and nothing
/// else of ours. Qt's own words have catalogues of their own: here they count as translated.
class PseudoTranslator final : public QTranslator
{
public:
    /// Fails the test at hand where lupdate does.
    PseudoTranslator();

    [[nodiscard]] bool isEmpty() const override { return m_messages.isEmpty(); }
    [[nodiscard]] QString translate(const char *context, const char *source,
        const char *disambiguation = nullptr, int n = -1) const override;

private:
    QSet<QStringList> m_messages; ///< context, source, disambiguation
};

} // namespace tests
