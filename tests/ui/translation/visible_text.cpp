#include "tests/ui/translation/visible_text.h"

#include "tests/ui/tour/painted_text.h"

#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QCompleter>
#include <QMetaProperty>
#include <QRegularExpression>
#include <QSet>
#include <QTabBar>
#include <QTextDocumentFragment>
#include <algorithm>

namespace tests {

namespace {

/// Properties that are for the program, or the same as another one.
const QSet<QByteArray> kUnseen{"objectName", "styleSheet", "windowFilePath", "windowRole",
    "displayFormat", "format", "markdown", "searchPaths", "source", "inputMask", "iconText",
    "windowIconText"};

QString plain(const QString &text)
{
    return Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text;
}

QString nameOf(const QObject &object)
{
    const QString kind = QString::fromLatin1(object.metaObject()->className());
    return object.objectName().isEmpty() ? kind : kind + u' ' + object.objectName();
}

class Collector
{
public:
    std::vector<VisibleText> found;

    void add(const QString &place, const QString &what, const QString &text)
    {
        if (!text.isEmpty())
            found.push_back({place + QStringLiteral(", ") + what, plain(text)});
    }

    void addProperties(const QObject &object)
    {
        const QMetaObject &kind = *object.metaObject();
        for (int i = 0; i < kind.propertyCount(); ++i) {
            const QMetaProperty property = kind.property(i);
            if (property.metaType() == QMetaType::fromType<QString>()
                && !kUnseen.contains(property.name()))
                add(nameOf(object), QString::fromLatin1(property.name()),
                    property.read(&object).toString());
        }
    }

    void addModel(const QString &place, const QAbstractItemModel *model)
    {
        if (!model || m_models.contains(model))
            return;
        m_models.insert(model);
        for (const Qt::Orientation way : {Qt::Horizontal, Qt::Vertical})
            for (int i = 0; i < (way == Qt::Horizontal ? model->columnCount() : model->rowCount());
                 ++i)
                for (const int role : kRoles)
                    addData(
                        place + QStringLiteral(" header"), role, model->headerData(i, way, role));
        addRows(place, *model, {});
    }

private:
    static constexpr int kRoles[]{Qt::DisplayRole, Qt::ToolTipRole, Qt::StatusTipRole,
        Qt::WhatsThisRole, Qt::AccessibleTextRole, Qt::AccessibleDescriptionRole};

    void addData(const QString &place, int role, const QVariant &value)
    {
        if (value.metaType() == QMetaType::fromType<QString>())
            add(place, QStringLiteral("role %1").arg(role), value.toString());
    }

    void addRows(const QString &place, const QAbstractItemModel &model, const QModelIndex &parent)
    {
        for (int row = 0; row < model.rowCount(parent); ++row)
            for (int column = 0; column < model.columnCount(parent); ++column) {
                const QModelIndex at = model.index(row, column, parent);
                for (const int role : kRoles)
                    addData(QStringLiteral("%1 row %2 column %3").arg(place).arg(row).arg(column),
                        role, at.data(role));
                if (column == 0)
                    addRows(place, model, at);
            }
    }

    QSet<const QAbstractItemModel *> m_models;
};

} // namespace

std::vector<VisibleText> visibleText(QWidget &root)
{
    Collector collector;
    for (const QString &text : paintedText(root))
        collector.add(nameOf(root), QStringLiteral("painted"), text);
    QObjectList all = root.findChildren<QObject *>();
    all.prepend(&root);
    for (QObject *object : all) {
        if (object->isWidgetType() || qobject_cast<QAction *>(object))
            collector.addProperties(*object);
        if (const auto *view = qobject_cast<QAbstractItemView *>(object))
            collector.addModel(nameOf(*object), view->model());
        if (const auto *box = qobject_cast<QComboBox *>(object))
            collector.addModel(nameOf(*object), box->model());
        if (const auto *completer = qobject_cast<QCompleter *>(object))
            collector.addModel(nameOf(*object), completer->model());
        if (const auto *tabs = qobject_cast<QTabBar *>(object))
            for (int tab = 0; tab < tabs->count(); ++tab) {
                collector.add(nameOf(*tabs), QStringLiteral("tab"), tabs->tabText(tab));
                collector.add(nameOf(*tabs), QStringLiteral("tab tip"), tabs->tabToolTip(tab));
            }
    }
    return collector.found;
}

QStringList latinText(const std::vector<VisibleText> &visible, const QStringList &data)
{
    static const QRegularExpression kSymbols(QStringLiteral( // sets, units, keys
        "(?<![A-Za-z])(x|kg|lb|then)(?![A-Za-z])|\\+[A-Z]\\b"));
    static const QRegularExpression kLatin(QStringLiteral("[A-Za-z]"));
    QStringList longestFirst = data;
    std::sort(longestFirst.begin(), longestFirst.end(),
        [](const QString &a, const QString &b) { return a.size() > b.size(); });
    QStringList found;
    for (const auto &[where, text] : visible) {
        QString words = text;
        for (const QString &each : longestFirst)
            words.remove(each);
        if (words.remove(kSymbols).contains(kLatin))
            found << where + QStringLiteral(": ") + text;
    }
    found.removeDuplicates();
    return found;
}

} // namespace tests
