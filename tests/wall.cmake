wainscot_test(wall_unit unit
  SOURCES unit/wall_cover.cpp unit/wall_propose.cpp unit/wall_sight.cpp unit/wall_stature.cpp
  LINK layout_wall layout_screen)
wainscot_test(wall_property property
  SOURCES property/wall_cover.cpp property/wall_propose.cpp LINK layout_wall)
