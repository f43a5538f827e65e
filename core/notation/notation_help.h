#pragma once

#include <QString>
#include <vector>

/// What can be written as sets and as entries of the log, by examples.
namespace core {

struct NotationForm
{
    QString example; ///< can be read as it stands; a set line may have several rows
    QString words;   ///< what it means
};

/// See core/notation/set_line.h.
[[nodiscard]] std::vector<NotationForm> setLineForms();
/// See core/notation/set_entry_text.h.
[[nodiscard]] std::vector<NotationForm> setEntryForms();

} // namespace core
