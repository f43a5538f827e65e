#include "ui/look/form_dialog.h"

#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <utility>

namespace ui {

FormDialog::FormDialog(QWidget *parent)
    : QDialog(parent)
    , m_trouble(named("notStored", new FieldNote(FieldNote::Kind::problem)))
{
}

void FormDialog::keepBy(std::function<bool()> keep)
{
    m_keep = std::move(keep);
}

void FormDialog::layOut(QLayout *page, QWidget *buttons, const QSize &size)
{
    setLayout(columnLayout({{new ScrollingRoom(page), 1}, m_trouble, buttons}));
    m_size = size;
}

void FormDialog::accept()
{
    if (!m_keep || m_keep())
        QDialog::accept();
    else
        m_trouble->say(tr(
            "This is not saved. What you typed is still here: try again, or copy it elsewhere."));
}

void FormDialog::reject()
{
    if (!isTouched() || mayDrop(windowTitle(), tr("What you changed here is not saved."), {}, this))
        QDialog::reject();
}

bool FormDialog::isTouched() const
{
    return isVisible() && fieldTexts(*this) != m_asOpened;
}

void FormDialog::showEvent(QShowEvent *event)
{
    QDialog::showEvent(event);
    if (event->spontaneous())
        return;
    m_asOpened = fieldTexts(*this);
    // Not before: what a dialog fills in after its layout is part of what it needs.
    if (std::exchange(m_isSized, true))
        return;
    for (ScrollingRoom *room : findChildren<ScrollingRoom *>())
        room->updateGeometry(); // which does not hear of its page
    sizeToScreen(*this, m_size);
}

bool mayDrop(const QString &title, const QString &words, const QString &what, QWidget *parent)
{
    QMessageBox ask(QMessageBox::Question, title, words, QMessageBox::NoButton, parent);
    ask.setTextFormat(Qt::PlainText);
    ask.setInformativeText(what);
    QPushButton *stay = ask.addButton(FormDialog::tr("&Go on editing"), QMessageBox::RejectRole);
    QPushButton *drop = ask.addButton(FormDialog::tr("&Drop it"), QMessageBox::AcceptRole);
    drop->setObjectName(QStringLiteral("drop"));
    ask.setDefaultButton(stay);
    ask.setEscapeButton(static_cast<QAbstractButton *>(stay));
    ask.exec();
    return ask.clickedButton() == drop;
}

QStringList fieldTexts(const QWidget &widget)
{
    QStringList texts;
    for (const QWidget *field : widget.findChildren<QWidget *>()) {
        if (const auto *line = qobject_cast<const QLineEdit *>(field))
            texts << line->text();
        else if (const auto *rows = qobject_cast<const QPlainTextEdit *>(field);
                 rows && !rows->isReadOnly())
            texts << rows->toPlainText();
        else if (const auto *choice = qobject_cast<const QComboBox *>(field))
            texts << choice->currentText();
        else if (const auto *tick = qobject_cast<const QAbstractButton *>(field);
                 tick && tick->isCheckable())
            texts << QString::number(int(tick->isChecked()));
        else if (const auto *table = qobject_cast<const QTableWidget *>(field))
            for (int row = 0; row < table->rowCount(); ++row)
                for (int column = 0; column < table->columnCount(); ++column)
                    if (const QTableWidgetItem *item = table->item(row, column);
                        item && item->flags().testFlag(Qt::ItemIsEditable))
                        texts << item->text();
    }
    return texts;
}

} // namespace ui
