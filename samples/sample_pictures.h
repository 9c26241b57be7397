// Which pictures the class has, when they were taken and how the camera held them.
#pragma once

#include "samples/camera_file.h"
#include "samples/sample_class.h"

namespace wainscot::samples {

struct SamplePicture {
    QString file; // its ending says the format
    QString scene; // name in the catalogue
    QString like; // a further picture: the file of the class's own picture of that scene
    std::uint32_t seed = 0; // added to the catalogue's own
    double scale = 1; // of the camera's size
    CameraNotes notes;
};

// As many as wished for: fewer = the first ones, more = further scenes with other seeds, smaller.
[[nodiscard]] std::vector<SamplePicture> puddlePictures(const Wish& wish);
[[nodiscard]] std::vector<SamplePicture> threadPictures(const Wish& wish);
[[nodiscard]] std::vector<SamplePicture> drawingPictures(const Wish& wish);

// Everything the file's bytes follow from, as one line.
[[nodiscard]] QString recipeOf(const SamplePicture& picture, const Wish& wish);

Result<> makePicture(const QString& path, const SamplePicture& picture, const Wish& wish);

} // namespace wainscot::samples
