#pragma once

#include <QCoreApplication>

namespace ui {

/// The words of ui outside the classes with Q_OBJECT, as core::Text.
struct Text
{
    Q_DECLARE_TR_FUNCTIONS(ui)
};

} // namespace ui
