#pragma once

#include <QCoreApplication>

namespace core {

/// The words of core that can be translated: Text::tr("..."). A struct, since lupdate finds the
/// context of a class with this macro, and none for a free function. Classes of ui with Q_OBJECT
/// have a tr() of their own. Outside core, a function that says words and returns core::Something
/// needs `using core::Something`: lupdate takes a qualified return type for the function's class.
struct Text
{
    Q_DECLARE_TR_FUNCTIONS(core)
};

} // namespace core
