#pragma once

#include <QJsonObject>

namespace core {

/// Words of the hand-out page by their key in resources/handout.
[[nodiscard]] QJsonObject handOutWords();

} // namespace core
