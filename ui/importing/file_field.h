#pragma once

#include <QWidget>

class QLineEdit;
class QPushButton;

namespace ui {

/// A file to read: its path, a button to choose it and one to take it back.
class FileField : public QWidget
{
    Q_OBJECT

public:
    /// @param what  for the file dialog's title: "Choose the training log"
    FileField(const QString &what, const QString &placeholder, QWidget *parent = nullptr);

    [[nodiscard]] QString path() const;
    /// A file that is chosen once more is told too: it may have been mended since it was read.
    void setPath(const QString &path);
    /// For labels and first focus. It is no focus proxy: Tab would pass over the other parts.
    [[nodiscard]] QPushButton &chooseButton() { return *m_choose; }

Q_SIGNALS:
    void pathChanged(const QString &path);

private:
    void choose();

    QString m_what;
    QLineEdit *m_path;
    QPushButton *m_choose;
    QPushButton *m_clear;
};

} // namespace ui
