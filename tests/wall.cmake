wainscot_test(wall_unit unit SOURCES unit/wall_sight.cpp LINK layout_wall layout_screen)
