#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <initializer_list>

class QFormLayout;
class QKeySequence;
class QLabel;
class QMimeData;
class QToolButton;
class QWidget;

/// Pieces that the forms are built from.
namespace ui {

/// The field with notes below it; notes take no room while they are empty.
[[nodiscard]] QWidget *withNotes(QWidget *field, std::initializer_list<QWidget *> notes);

/// Widgets side by side at their own width.
[[nodiscard]] QWidget *inRow(std::initializer_list<QWidget *> widgets);

/// A row whose label's mnemonic goes to `buddy`, also where that is only part of `field`.
void addRow(QFormLayout *form, const QString &text, QWidget *buddy, QWidget *field);

/// A line in semi-bold over what belongs to it.
[[nodiscard]] QLabel *heading(const QString &text);

/// Plain text that wraps, for words that may come from the roster.
[[nodiscard]] QLabel *plainWords(const QString &text = {});

/// Text over several lines, from the top left.
[[nodiscard]] QLabel *paragraph(const QString &text);

/// The files that are dragged or pasted.
[[nodiscard]] QStringList localPaths(const QMimeData &mime);

/// A button of `header` that turns what is shown; the keys do so wherever the focus is within the
/// page that the header stands in.
[[nodiscard]] QToolButton *turnButton(const QString &text, const QString &name,
    const QKeySequence &keys, QWidget *header, const std::function<void()> &turn);

} // namespace ui
