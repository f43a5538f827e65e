#pragma once

#include <QWidget>

class QLineEdit;
class QToolButton;

namespace ui {

/// A file to read: its path, a button to choose it and one to take it back.
class FileField : public QWidget
{
    Q_OBJECT

public:
    /// @param what  for the file dialog's title: "Choose the training log"
    FileField(const QString &what, const QString &placeholder, QWidget *parent = nullptr);

    [[nodiscard]] QString path() const;
    void setPath(const QString &path);

Q_SIGNALS:
    void pathChanged(const QString &path);

private:
    void choose();

    QString m_what;
    QLineEdit *m_path;
    QToolButton *m_clear;
};

} // namespace ui
