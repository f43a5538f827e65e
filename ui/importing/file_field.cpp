#include "ui/importing/file_field.h"

#include "ui/look/file_dialogs.h"
#include "ui/look/form_parts.h"

#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

namespace ui {

namespace {
const QString kFolderKey = QStringLiteral("import/folder");
} // namespace

FileField::FileField(const QString &what, const QString &placeholder, QWidget *parent)
    : QWidget(parent)
    , m_what(what)
    , m_path(new QLineEdit(this))
    , m_choose(new QPushButton(tr("Choose…"), this))
    , m_clear(new QPushButton(tr("Clear"), this))
{
    m_path->setReadOnly(true);
    m_path->setPlaceholderText(placeholder);
    m_path->setAccessibleName(what);
    m_choose->setAccessibleName(what);
    m_choose->setAutoDefault(false);
    m_clear->setAutoDefault(false);
    m_clear->setEnabled(false);

    fill(this, rowLayout({{m_path, 1}, m_choose, m_clear}, space::gap));

    connect(m_choose, &QPushButton::clicked, this, &FileField::choose);
    connect(m_clear, &QPushButton::clicked, this, [this] { setPath({}); });
}

QString FileField::path() const
{
    return QDir::fromNativeSeparators(m_path->text());
}

void FileField::setPath(const QString &path)
{
    if (path.isEmpty() && this->path().isEmpty())
        return;
    m_path->setText(QDir::toNativeSeparators(path));
    m_path->setToolTip(m_path->text());
    m_clear->setEnabled(!path.isEmpty());
    Q_EMIT pathChanged(path);
}

void FileField::choose()
{
    QSettings settings;
    const QString path =
        askForFile(this, m_what, settings.value(kFolderKey, QDir::homePath()).toString(),
            tr("Comma-separated values (*.csv);;All files (*)"));
    if (path.isEmpty())
        return;
    settings.setValue(kFolderKey, QFileInfo(path).absolutePath());
    setPath(path);
}

} // namespace ui
