#include "tests/ui/tour/window_tour.h"
#include "tests/ui/translation/visible_text.h"

#include <QLabel>

namespace tests {

TEST_F(WindowTour, FindsALabelThatIsPlanted)
{
    EXPECT_THAT(latinText(visibleText(window), data), testing::IsEmpty());
    QLabel planted(QStringLiteral("left"), &window);
    EXPECT_THAT(latinText(visibleText(window), data), testing::Not(testing::IsEmpty()));
}

} // namespace tests
