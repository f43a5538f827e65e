#include "ui/look/touch_mark.h"

#include "ui/look/metrics.h"
#include "ui/look/theme.h"

#include <QImage>
#include <QPainter>
#include <gmock/gmock.h>

namespace {

using core::Serves;
using core::TouchStyle;
using ui::touchMarkPath;

const QRectF kBox(0, 0, 40, 40);

/// Black where the mark is, so that colour plays no part.
QImage shapeOf(const QPainterPath &path)
{
    QImage image(40, 40, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.fillPath(path, Qt::black);
    return image;
}

} // namespace

TEST(TouchMark, ShapesAloneTellTheStylesApart)
{
    const QList<QImage> shapes{shapeOf(touchMarkPath(kBox, TouchStyle::soft)),
        shapeOf(touchMarkPath(kBox, TouchStyle::sinking)),
        shapeOf(touchMarkPath(kBox, TouchStyle::undecided)),
        shapeOf(touchMarkPath(kBox, Serves::both))};
    for (qsizetype i = 0; i < shapes.size(); ++i)
        for (qsizetype j = i + 1; j < shapes.size(); ++j)
            EXPECT_NE(shapes[i], shapes[j]) << i << " and " << j;
}

TEST(TouchMark, AVariationAndALifterOfOneStyleShareTheMark)
{
    EXPECT_EQ(touchMarkPath(kBox, TouchStyle::soft), touchMarkPath(kBox, Serves::soft));
    EXPECT_EQ(touchMarkPath(kBox, TouchStyle::sinking), touchMarkPath(kBox, Serves::sinking));
}

TEST(TouchMark, StaysInsideItsBoxAndCentredInAWideOne)
{
    const QRectF wide(10, 10, 90, 30);
    for (const Serves serves : {Serves::soft, Serves::sinking, Serves::both}) {
        const QRectF bounds = touchMarkPath(wide, serves).boundingRect();
        EXPECT_TRUE(wide.adjusted(-0.01, -0.01, 0.01, 0.01).contains(bounds));
        EXPECT_NEAR(bounds.center().x(), wide.center().x(), 0.01);
    }
}

TEST(TouchMark, ARingIsOpenAndATriangleFilled)
{
    EXPECT_EQ(shapeOf(touchMarkPath(kBox, TouchStyle::soft)).pixelColor(20, 20), Qt::white);
    EXPECT_EQ(shapeOf(touchMarkPath(kBox, TouchStyle::sinking)).pixelColor(20, 20), Qt::black);
}

TEST(TouchMark, IconsFollowTheScheme)
{
    const auto pixels = [](ui::Scheme scheme) {
        return ui::touchMarkIcon(Serves::sinking, ui::paletteFor(scheme))
            .pixmap(ui::space::mark)
            .toImage();
    };
    EXPECT_NE(pixels(ui::Scheme::light), pixels(ui::Scheme::dark));
}
