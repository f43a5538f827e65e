#pragma once

#include "ui/look/colours.h"

#include <optional>

class QObject;

namespace ui {

/// Light or dark as the desktop asks for it, by the settings portal (freedesktop.org, XDG Desktop
/// Portal, namespace org.freedesktop.appearance, key color-scheme: 0 no preference, 1 dark,
/// 2 light). Empty where no portal answers or no preference is set.
[[nodiscard]] std::optional<Scheme> desktopScheme();

/// Calls the slot `slot` (made with SLOT()) of `receiver` when a setting of the portal changes.
void watchDesktopScheme(QObject *receiver, const char *slot);

} // namespace ui
