wainscot_test(model_unit unit
  SOURCES unit/edit_builder.cpp unit/edit_history.cpp unit/model_book.cpp unit/model_child.cpp
    unit/model_framing.cpp unit/model_names.cpp unit/model_template.cpp
  LINK core_edit)
