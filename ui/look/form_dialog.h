#pragma once

#include <QDialog>
#include <functional>

class QLayout;

namespace ui {

class FieldNote;

/// A dialog that things are typed into. It scrolls on a screen that is too small for it, stays open
/// where what was typed cannot be stored, and asks before that is dropped.
class FormDialog : public QDialog
{
    Q_OBJECT

public:
    explicit FormDialog(QWidget *parent = nullptr);

    /// What becomes of the form when it is accepted. Where this returns false it stays open.
    void keepBy(std::function<bool()> keep);

    void accept() override;
    void reject() override;

protected:
    /// The page above the buttons.
    /// @param size  to open at, as far as the screen goes; empty = what the page needs
    void layOut(QLayout *page, QWidget *buttons, const QSize &size = {});
    /// Something would be lost if the form were closed now.
    [[nodiscard]] virtual bool isTouched() const;

    void showEvent(QShowEvent *event) override;

private:
    std::function<bool()> m_keep;
    FieldNote *m_trouble;
    QStringList m_asOpened; ///< see fieldTexts()
    QSize m_size;           ///< see layOut()
    bool m_isSized = false;
};

/// Asks whether what is not saved may go.
/// @param what  as the coach typed it; may be empty
[[nodiscard]] bool mayDrop(
    const QString &title, const QString &words, const QString &what, QWidget *parent);

/// What the fields in the widget hold, in the order that they were made in.
[[nodiscard]] QStringList fieldTexts(const QWidget &widget);

} // namespace ui
