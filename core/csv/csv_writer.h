#pragma once

#include <QByteArray>
#include <QString>
#include <initializer_list>

namespace core {

/// A field of a CSV line (RFC 4180), in quotation marks where it needs them.
[[nodiscard]] QByteArray csvField(const QString &text);

/// A line of finished fields, closed by CRLF.
[[nodiscard]] QByteArray csvLine(std::initializer_list<QByteArray> fields);

/// The shortest decimal form that reads back as the same number: "102.5", "100".
[[nodiscard]] QByteArray csvNumber(double value);

} // namespace core
