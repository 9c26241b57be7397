#include "samples/pictures/catalogue.h"

#include "samples/pictures/drawings/drawings.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {

const std::vector<Entry>& catalogue()
{
    static const QSize wide(4032, 3024), tall(3024, 4032), a4wide(3508, 2480), a4tall(2480, 3508);
    static const std::vector<Entry> entries = {
        {"puddle_branches", wide, 11, puddleWithBranches},
        {"puddle_raindrops", tall, 12, puddleRaindrops},
        {"chalk_day1", wide, 13, chalkFirstDay},
        {"chalk_shrinking", wide, 13, chalkShrinking},
        {"puddle_gone", wide, 13, puddleGone},
        {"wet_leaves", wide, 21, wetLeaves},
        {"string_around", wide, 22, stringAroundPuddle},
        {"mud_prints", tall, 23, mudPrints},
        {"window_drops", tall, 34, windowDrops},
        {"cloud_over_roofs", wide, 25, cloudOverRoofs},
        {"jar_row", wide, 26, jarRow},
        {"rubber_boots", tall, 27, rubberBoots},
        {"jug_and_funnel", wide, 28, jugAndFunnel},
        {"snail_on_stone", wide, 29, snailOnStone},
        {"sieve_on_sand", wide, 30, sieveOnSand},
        {"wet_hands", wide, 32, wetHands},
        {"yard_panorama", {7680, 2560}, 31, yardPanorama},
        {"drawing_sun_photo", wide, 57, drawingSunDrinks},
        {"drawing_puddle_arrows", a4wide, 51, drawingPuddleArrows},
        {"drawing_worm", a4tall, 52, drawingWorm},
        {"drawing_cloud_drinks", a4wide, 53, drawingCloudDrinking},
        {"drawing_yard_map", a4wide, 54, drawingYardMap},
        {"drawing_umbrella", a4tall, 55, drawingUmbrella},
        {"drawing_measuring", a4wide, 56, drawingMeasuring},
    };
    return entries;
}

} // namespace wainscot::samples
