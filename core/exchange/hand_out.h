#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/loads/week_sheet.h"

#include <QByteArray>
#include <QJsonObject>
#include <span>

/// The hand-out: one HTML page a lifter and week that works from a file on a phone, without any
/// network. The lifter checks in, logs the sets and gives back a return sheet
/// (core/exchange/return_sheet.h).
///
/// Words of the coach go in as JSON in a data block, which no browser runs, with < > & and the line
/// separators of JavaScript escaped (ECMA-404, HTML Living Standard 4.12.1.3), and reach the screen
/// as text nodes. A Content Security Policy (W3C CSP3) in the page allows the page's own style and
/// script by their SHA-256 and nothing else: no network, no frames, no forms, no other script.
namespace core {

/// Everything the page shows, see resources/handout. The same input gives the same page.
/// @param sheet  of the lifter and of the week
/// @param cards  of the lifter and of the week
[[nodiscard]] QJsonObject handOutData(const Lifter &lifter, const WeekSheet &sheet,
    std::span<const Card> cards, std::span<const Variation> variations);

/// The finished page, UTF-8.
[[nodiscard]] QByteArray handOutPage(const QJsonObject &data);

} // namespace core
