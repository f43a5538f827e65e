#include "ui/look/file_dialogs.h"

#include "ui/look/text.h"

#include <QFileDialog>
#include <QFileIconProvider>

namespace ui {

namespace {

/// By what a file is called, never by what is in it.
class IconsByName : public QFileIconProvider
{
public:
    [[nodiscard]] QIcon icon(const QFileInfo &info) const override
    {
        return QFileIconProvider::icon(info.isDir() ? Folder : File);
    }
    [[nodiscard]] QString type(const QFileInfo &info) const override
    {
        return info.isDir() ? Text::tr("Folder") : info.suffix();
    }
};

struct Icons
{
    IconsByName icons;
};

/// With the icons as a base before it, since they outlive the dialog.
class FileDialog : private Icons, public QFileDialog
{
public:
    FileDialog(QWidget *parent, const QString &title, const QString &folder, const QString &filters)
        : QFileDialog(parent, title, folder, filters)
    {
        setOption(DontUseNativeDialog);
        setIconProvider(&icons);
    }

    QStringList ask() { return exec() == Accepted ? selectedFiles() : QStringList(); }
};

QStringList askForExisting(QWidget *parent, const QString &title, const QString &start,
    const QString &filters, QFileDialog::FileMode mode)
{
    FileDialog dialog(parent, title, start, filters);
    dialog.setFileMode(mode);
    return dialog.ask();
}

} // namespace

QString askForFile(
    QWidget *parent, const QString &title, const QString &start, const QString &filters)
{
    return askForExisting(parent, title, start, filters, QFileDialog::ExistingFile).value(0);
}

QStringList askForFiles(
    QWidget *parent, const QString &title, const QString &start, const QString &filters)
{
    return askForExisting(parent, title, start, filters, QFileDialog::ExistingFiles);
}

QString askForFolder(QWidget *parent, const QString &title, const QString &start)
{
    FileDialog dialog(parent, title, start, {});
    dialog.setFileMode(QFileDialog::Directory);
    dialog.setOption(QFileDialog::ShowDirsOnly);
    return dialog.ask().value(0);
}

QString askForFileToWrite(
    QWidget *parent, const QString &title, const QString &path, const QString &filters, Taken taken)
{
    const QFileInfo file(path);
    FileDialog dialog(parent, title, file.path(), filters);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setOption(QFileDialog::DontConfirmOverwrite, taken == Taken::isLeftToCaller);
    dialog.selectFile(file.fileName());
    return dialog.ask().value(0);
}

} // namespace ui
