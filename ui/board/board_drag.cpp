#include "ui/board/board_drag.h"

#include <QCoreApplication>

namespace ui {

namespace {

const QString kVariation = QStringLiteral("application/x-benchwright-variation");
const QString kCard = QStringLiteral("application/x-benchwright-card");

/// "process:id"; the process keeps out rows of another window's roster.
QByteArray written(qint64 id)
{
    return QByteArray::number(QCoreApplication::applicationPid()) + ':' + QByteArray::number(id);
}

/// 0 when there is none or it is not ours.
qint64 readId(const QMimeData *mime, const QString &type)
{
    const QList<QByteArray> parts = mime->data(type).split(':');
    if (parts.size() != 2 || parts[0].toLongLong() != QCoreApplication::applicationPid())
        return 0;
    return parts[1].toLongLong();
}

std::unique_ptr<QMimeData> made(const QString &type, qint64 id)
{
    auto mime = std::make_unique<QMimeData>();
    mime->setData(type, written(id));
    return mime;
}

} // namespace

std::unique_ptr<QMimeData> mimeOf(core::VariationId variation)
{
    return made(kVariation, variation.value);
}

std::unique_ptr<QMimeData> mimeOf(core::CardId card)
{
    return made(kCard, card.value);
}

Dragged draggedIn(const QMimeData *mime)
{
    if (const core::VariationId variation{readId(mime, kVariation)}; variation.isValid())
        return variation;
    if (const core::CardId card{readId(mime, kCard)}; card.isValid())
        return card;
    return {};
}

QString variationMimeType()
{
    return kVariation;
}

} // namespace ui
