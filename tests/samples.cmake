wainscot_test(samples_class unit SOURCES unit/samples_class.cpp LINK samples_maker)
