#pragma once

#include <QString>
#include <stdexcept>

namespace core {

/// The world failed: disk, lock, SQL. `words()` is for the coach; `detail()` holds statement and
/// driver text for a report. Caught at one boundary in ui and at one in app.
class StorageError : public std::runtime_error
{
public:
    explicit StorageError(QString words, QString detail = {})
        : std::runtime_error((detail.isEmpty() ? words : words + u'\n' + detail).toStdString())
        , m_words(std::move(words))
        , m_detail(std::move(detail))
    {
    }
    [[nodiscard]] const QString &words() const { return m_words; }
    [[nodiscard]] const QString &detail() const { return m_detail; }

private:
    QString m_words;
    QString m_detail;
};

} // namespace core
