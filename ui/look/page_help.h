#pragma once

#include <QKeySequence>
#include <QObject>
#include <functional>
#include <utility>
#include <vector>

class QKeyEvent;
class QWidget;

/// What the pages add to the help that is shown of them. Actions, shortcuts and mnemonics need not
/// be told: help finds them.
namespace ui {

struct HelpRow
{
    QString left; ///< keys, or what is written
    QString words;

    friend bool operator==(const HelpRow &, const HelpRow &) = default;
};

using HelpRows = std::vector<HelpRow>;

/// Lies among the children of the widget that it helps with.
class HelpSection : public QObject
{
    Q_OBJECT

public:
    /// @param rows  asked when the help is shown
    HelpSection(const QString &heading, std::function<HelpRows()> rows, QWidget *of);

    [[nodiscard]] const QString &heading() const { return m_heading; }
    [[nodiscard]] HelpRows rows() const { return m_rows(); }

private:
    QString m_heading;
    std::function<HelpRows()> m_rows;
};

/// Keys in the user's words: "Ctrl+C, Ctrl+Ins".
[[nodiscard]] HelpRow keyRow(const std::vector<QKeySequence> &keys, const QString &words);

/// Keys in the order in which they come, those with the same words in one row.
class KeyRows
{
public:
    void add(const QKeySequence &keys, const QString &words);
    [[nodiscard]] HelpRows rows() const;

private:
    std::vector<std::pair<QString, std::vector<QKeySequence>>> m_keysOfWords;
};

/// The keys that a widget's own table knows, found by asking it of every key there is, so that help
/// says what the keys do.
/// @param wordsFor  what the key does; empty for a key that the widget leaves alone. A key that
///                  does the same without what is held is not named twice.
[[nodiscard]] HelpRows keysOf(const std::function<QString(const QKeyEvent &)> &wordsFor);

/// Examples with their meaning, of a type with `example` and `words`.
template <class Form> [[nodiscard]] HelpRows formRows(const std::vector<Form> &forms)
{
    HelpRows rows;
    for (const Form &form : forms)
        rows.push_back({form.example, form.words});
    return rows;
}

} // namespace ui
