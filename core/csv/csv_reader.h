#pragma once

#include <QByteArray>
#include <QString>
#include <string>
#include <string_view>
#include <vector>

class QIODevice;

namespace core {

/// Reads comma-separated values (RFC 4180) in one pass, however long the file is: fields in quotes
/// may hold commas, quotes (doubled) and line breaks. Lines end with CRLF or LF, a UTF-8 byte order
/// mark is skipped, empty lines too. The text has to be UTF-8 without NUL.
///
/// A fault spoils its record only: the reader goes on with the next line.
class CsvReader
{
public:
    /// A record longer than this is a fault: no row of ours comes near it.
    static constexpr size_t kMaxRecordBytes = 1'000'000;

    enum class Step { record, fault, end };

    explicit CsvReader(QIODevice &device); ///< open for reading; outlives the reader

    /// Throws StorageError when the device fails.
    [[nodiscard]] Step next();

    /// Line of the file, from 1, where the record or the fault is.
    [[nodiscard]] int line() const { return m_recordLine; }
    /// After Step::record, until the next call.
    [[nodiscard]] const std::vector<std::string_view> &fields() const { return m_fields; }
    /// After Step::fault: what is wrong and what to do.
    [[nodiscard]] const QString &words() const { return m_words; }
    [[nodiscard]] const QString &remedy() const { return m_remedy; }

private:
    [[nodiscard]] int get();
    void skipByteOrderMark();
    void skipLine();
    [[nodiscard]] Step readRecord();
    [[nodiscard]] Step finish();
    [[nodiscard]] Step fault(int line, const QString &words, const QString &remedy);
    [[nodiscard]] Step tooLong();
    [[nodiscard]] Step notUtf8(size_t fieldBegin);

    QIODevice &m_device;
    QByteArray m_chunk;
    qsizetype m_chunkAt = 0;
    int m_line = 1; ///< of the next byte
    int m_recordLine = 1;
    int m_last = -1;            ///< byte before the next one
    std::string m_bytes;        ///< contents of the record's fields, one after the other
    std::vector<size_t> m_ends; ///< where each field ends in m_bytes
    std::vector<std::string_view> m_fields;
    QString m_words;
    QString m_remedy;
};

} // namespace core
