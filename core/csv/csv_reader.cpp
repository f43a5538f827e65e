#include "core/csv/csv_reader.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"

#include <QByteArrayView>
#include <QFileDevice>
#include <algorithm>

namespace core {

namespace {

constexpr qint64 kChunkBytes = 1 << 16;

bool isText(std::string_view bytes)
{
    return QByteArrayView(bytes.data(), qsizetype(bytes.size())).isValidUtf8()
        && bytes.find('\0') == std::string_view::npos;
}

} // namespace

CsvReader::CsvReader(QIODevice &device)
    : m_device(device)
{
    skipByteOrderMark();
}

CsvReader::Step CsvReader::next()
{
    for (;;) {
        const Step step = readRecord();
        const bool emptyLine = step == Step::record && m_fields.size() == 1 && m_bytes.empty();
        if (!emptyLine)
            return step;
    }
}

int CsvReader::get()
{
    if (m_chunkAt == m_chunk.size()) {
        m_chunk.resize(kChunkBytes);
        const qint64 count = m_device.read(m_chunk.data(), kChunkBytes);
        m_chunk.resize(std::max<qint64>(count, 0));
        m_chunkAt = 0;
        if (count <= 0) {
            const auto *file = qobject_cast<QFileDevice *>(&m_device);
            if (file && file->error() != QFileDevice::NoError)
                throw StorageError(Text::tr("The file cannot be read."), file->errorString());
            return m_last = -1; // a pipe that has ended reads -1
        }
    }
    m_last = static_cast<unsigned char>(m_chunk[m_chunkAt++]);
    if (m_last == '\n')
        ++m_line;
    return m_last;
}

void CsvReader::skipByteOrderMark()
{
    const QByteArray mark = QByteArrayLiteral("\xEF\xBB\xBF");
    if (m_device.peek(mark.size()) == mark)
        m_device.skip(mark.size());
}

void CsvReader::skipLine()
{
    while (m_last != '\n' && m_last != -1)
        (void)get();
}

CsvReader::Step CsvReader::readRecord()
{
    enum class In { start, plain, quotes, afterQuotes };

    m_bytes.clear();
    m_ends.clear();
    m_fields.clear();
    m_recordLine = m_line;
    In in = In::start;
    int quoteLine = 0;
    for (bool first = true;; first = false) {
        int c = get();
        if (c == -1) {
            if (first)
                return Step::end;
            if (in == In::quotes)
                return fault(quoteLine, Text::tr("A quotation mark is opened and never closed."),
                    Text::tr("Close the field with \", and write a \" inside it twice."));
            m_ends.push_back(m_bytes.size());
            return finish();
        }
        if (m_bytes.size() + m_ends.size() >= kMaxRecordBytes)
            return tooLong();
        if (in == In::quotes) {
            if (c == '"')
                in = In::afterQuotes;
            else
                m_bytes.push_back(char(c));
            continue;
        }
        if (c == '"' && in == In::afterQuotes) { // a doubled mark stands for one
            m_bytes.push_back('"');
            in = In::quotes;
            continue;
        }
        if (c == '\r') {
            c = get();
            if (c != '\n' && c != -1)
                return fault(m_recordLine, Text::tr("A carriage return stands alone."),
                    Text::tr("Save the file with the usual line ends."));
            m_ends.push_back(m_bytes.size());
            return finish();
        }
        if (c == '\n' || c == ',') {
            m_ends.push_back(m_bytes.size());
            in = In::start;
            if (c == '\n')
                return finish();
        } else if (c == '"' && in == In::start) {
            in = In::quotes;
            quoteLine = m_line;
        } else if (c == '"' || in == In::afterQuotes) {
            return fault(m_recordLine,
                Text::tr("A quotation mark stands in the middle of a field."),
                Text::tr(
                    "Put the whole field in quotation marks, and write a \" inside it twice."));
        } else {
            m_bytes.push_back(char(c));
            in = In::plain;
        }
    }
}

CsvReader::Step CsvReader::finish()
{
    size_t begin = 0;
    for (const size_t end : m_ends) {
        m_fields.push_back(std::string_view(m_bytes).substr(begin, end - begin));
        if (!isText(m_fields.back()))
            return notUtf8(begin);
        begin = end;
    }
    return Step::record;
}

CsvReader::Step CsvReader::fault(int line, const QString &words, const QString &remedy)
{
    skipLine();
    m_recordLine = line;
    m_words = words;
    m_remedy = remedy;
    return Step::fault;
}

CsvReader::Step CsvReader::tooLong()
{
    return fault(m_recordLine, Text::tr("The line is longer than one million bytes."),
        Text::tr("Give each set a line of its own, and look for a quotation mark that is never "
                 "closed."));
}

CsvReader::Step CsvReader::notUtf8(size_t begin)
{
    const std::string_view bytes = m_bytes;
    size_t end = bytes.find('\n', begin);
    while (end != std::string_view::npos && isText(bytes.substr(begin, end - begin))) {
        begin = end + 1;
        end = bytes.find('\n', begin);
    }
    m_recordLine += int(std::count(bytes.begin(), bytes.begin() + std::ptrdiff_t(begin), '\n'));
    m_words = Text::tr("The line is not UTF-8 text.");
    m_remedy = Text::tr("Save the file again as \"CSV UTF-8\".");
    return Step::fault;
}

} // namespace core
