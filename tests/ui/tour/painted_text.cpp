#include "tests/ui/tour/painted_text.h"

#include <QLineF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>

namespace tests {

namespace {

/// Keeps the text and drops the rest.
class TextEngine final : public QPaintEngine
{
public:
    TextEngine()
        : QPaintEngine(AllFeatures)
    {
    }
    std::vector<PaintedLine> lines;

    bool begin(QPaintDevice *) override { return true; }
    bool end() override { return true; }
    [[nodiscard]] Type type() const override { return User; }
    void updateState(const QPaintEngineState &) override {}
    void drawTextItem(const QPointF &at, const QTextItem &item) override
    {
        const QTransform toDevice = painter()->deviceTransform();
        const QRectF rect = toDevice.mapRect(
            QRectF(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent()));
        const QRectF clip =
            painter()->hasClipping() ? toDevice.mapRect(painter()->clipBoundingRect()) : QRectF();
        // A line comes in pieces, one where its letters change.
        if (QLineF(at, m_end).length() < 0.5) {
            lines.back().text += item.text();
            lines.back().rect |= rect;
        } else {
            lines.push_back({item.text(), rect, clip});
        }
        m_end = at + QPointF(item.width(), 0.0);
    }
    void drawPath(const QPainterPath &) override {}
    void drawPolygon(const QPointF *, int, PolygonDrawMode) override {}
    void drawPixmap(const QRectF &, const QPixmap &, const QRectF &) override {}
    void drawTiledPixmap(const QRectF &, const QPixmap &, const QPointF &) override {}
    void drawImage(
        const QRectF &, const QImage &, const QRectF &, Qt::ImageConversionFlags) override
    {
    }

private:
    QPointF m_end{-1.0, -1.0}; ///< of the last piece
};

class TextDevice final : public QPaintDevice
{
public:
    explicit TextDevice(const QPaintDevice &like)
        : m_like(like)
    {
    }
    [[nodiscard]] QPaintEngine *paintEngine() const override { return &m_engine; }
    [[nodiscard]] const std::vector<PaintedLine> &lines() const { return m_engine.lines; }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric what) const override
    {
        switch (what) {
        case PdmWidth:
            return m_like.width();
        case PdmHeight:
            return m_like.height();
        case PdmDpiX:
        case PdmPhysicalDpiX:
            return m_like.logicalDpiX();
        case PdmDpiY:
        case PdmPhysicalDpiY:
            return m_like.logicalDpiY();
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return int(devicePixelRatioFScale());
        default:
            return QPaintDevice::metric(what);
        }
    }

private:
    const QPaintDevice &m_like;
    mutable TextEngine m_engine;
};

} // namespace

std::vector<PaintedLine> paintedLines(QWidget &widget, QWidget::RenderFlags flags)
{
    TextDevice device(widget);
    widget.render(&device, {}, {}, flags);
    return device.lines();
}

QStringList paintedText(QWidget &widget)
{
    QStringList texts;
    for (const PaintedLine &line : paintedLines(widget))
        texts << line.text;
    return texts;
}

} // namespace tests
