wainscot_test(model_unit unit
  SOURCES unit/edit_builder.cpp unit/edit_history.cpp unit/edit_removal.cpp unit/model_book.cpp unit/model_child.cpp
    unit/model_framing.cpp unit/model_names.cpp unit/model_plain_name.cpp unit/model_reading_level.cpp unit/model_template.cpp unit/model_treatment.cpp
    unit/model_verbatim.cpp
  LINK core_edit)
wainscot_test(model_property property SOURCES property/model_verbatim.cpp LINK core_model)
