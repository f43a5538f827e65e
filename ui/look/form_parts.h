#pragma once

#include <QString>
#include <initializer_list>

class QFormLayout;
class QWidget;

/// Pieces that the forms are built from.
namespace ui {

/// The field with notes below it; notes take no room while they are empty.
[[nodiscard]] QWidget *withNotes(QWidget *field, std::initializer_list<QWidget *> notes);

/// Widgets side by side at their own width.
[[nodiscard]] QWidget *inRow(std::initializer_list<QWidget *> widgets);

/// A row whose label's mnemonic goes to `buddy`, also where that is only part of `field`.
void addRow(QFormLayout *form, const QString &text, QWidget *buddy, QWidget *field);

} // namespace ui
