#pragma once

#include <QCoreApplication>

namespace app {

/// The words of the command line, as core::Text.
struct Text
{
    Q_DECLARE_TR_FUNCTIONS(app)
};

} // namespace app
