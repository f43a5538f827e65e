#pragma once

#include <QJsonObject>
#include <QStringList>

namespace core {

/// Words of the hand-out page by their key in resources/handout.
[[nodiscard]] QJsonObject handOutWords();

/// The five steps of touch in words, from 1 to 5.
[[nodiscard]] QStringList touchSteps();

} // namespace core
