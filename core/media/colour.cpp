#include "core/media/colour.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include <lcms2.h>

namespace wainscot {

namespace {

struct CloseProfile {
    void operator()(void* profile) const { cmsCloseProfile(profile); }
};
struct DeleteTransform {
    void operator()(void* transform) const { cmsDeleteTransform(transform); }
};
struct FreeCurve {
    void operator()(cmsToneCurve* curve) const { cmsFreeToneCurve(curve); }
};
using Profile = std::unique_ptr<void, CloseProfile>;
using Transform = std::unique_ptr<void, DeleteTransform>;
using Curve = std::unique_ptr<cmsToneCurve, FreeCurve>;

Curve sRgbCurve()
{
    // IEC 61966-2-1 as Little CMS's parametric curve of type 4.
    const std::array<cmsFloat64Number, 5> numbers{
        2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
    return Curve(cmsBuildParametricToneCurve(nullptr, 4, numbers.data()));
}

Transform transformFor(const QByteArray& icc, PixelForm kind)
{
    if (icc.isEmpty())
        return nullptr;
    const Profile from(
        cmsOpenProfileFromMem(icc.constData(), static_cast<cmsUInt32Number>(icc.size())));
    if (!from)
        return nullptr;
    const cmsColorSpaceSignature space = cmsGetColorSpace(from.get());
    constexpr cmsUInt32Number flags = cmsFLAGS_BLACKPOINTCOMPENSATION;
    const auto make = [&](cmsUInt32Number in, const Profile& to, cmsUInt32Number out) {
        return Transform(
            cmsCreateTransform(from.get(), in, to.get(), out, INTENT_RELATIVE_COLORIMETRIC, flags));
    };
    if (kind == PixelForm::Grey && space == cmsSigGrayData) {
        const Profile grey(cmsCreateGrayProfile(cmsD50_xyY(), sRgbCurve().get()));
        return make(TYPE_GRAY_8, grey, TYPE_GRAY_8);
    }
    const Profile sRgb(cmsCreate_sRGBProfile());
    if (kind == PixelForm::Cmyk && space == cmsSigCmykData)
        return make(TYPE_CMYK_8, sRgb, TYPE_RGB_8);
    const bool colour = kind == PixelForm::Rgb || kind == PixelForm::YCbCr;
    if (colour && space == cmsSigRgbData)
        return make(TYPE_RGB_8, sRgb, TYPE_RGB_8);
    return nullptr;
}

// Tries a cube of colours; profiles of the same colours differ in bytes, dates and names.
bool changesNothing(cmsHTRANSFORM transform, int channels)
{
    constexpr int kStep = 51;
    constexpr int kTolerance = 2;
    for (int r = 0; r <= 255; r += kStep) {
        for (int g = 0; g <= 255; g += kStep) {
            for (int b = 0; b <= 255; b += kStep) {
                const std::array<std::uint8_t, 3> in{
                    std::uint8_t(r), std::uint8_t(g), std::uint8_t(b)};
                std::array<std::uint8_t, 3> out = in;
                cmsDoTransform(transform, in.data(), out.data(), 1);
                for (std::size_t c = 0; c < std::size_t(channels); ++c) {
                    if (std::abs(in[c] - out[c]) > kTolerance)
                        return false;
                }
            }
        }
    }
    return true;
}

class ConvertedRows final : public RowSource {
public:
    ConvertedRows(std::unique_ptr<RowSource> source, Transform transform, PixelForm kind)
        : RowSource(source->size(), kind)
        , m_source(std::move(source))
        , m_transform(std::move(transform))
        , m_line(m_source->rowBytes())
    {
    }
    bool next(std::uint8_t* row) override
    {
        if (!m_source->next(m_line.data()))
            return false;
        if (m_transform) {
            cmsDoTransform(m_transform.get(), m_line.data(), row, cmsUInt32Number(size().width));
            return true;
        }
        for (std::size_t at = 0; at < m_line.size(); at += 4) {
            for (std::size_t c = 0; c < 3; ++c) {
                const int light = (255 - m_line[at + c]) * (255 - m_line[at + 3]);
                *row++ = static_cast<std::uint8_t>((light + 127) / 255);
            }
        }
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    std::unique_ptr<RowSource> m_source;
    Transform m_transform; // none: CMYK without a profile
    std::vector<std::uint8_t> m_line;
};

} // namespace

bool isAlreadySRgb(const QByteArray& icc, PixelForm kind)
{
    if (kind == PixelForm::Cmyk)
        return false;
    const Transform transform = transformFor(icc, kind);
    return !transform || changesNothing(transform.get(), channelsOf(kind));
}

std::unique_ptr<RowSource> inSRgb(std::unique_ptr<RowSource> source, const QByteArray& icc)
{
    const PixelForm kind = source->kind();
    Transform transform = transformFor(icc, kind);
    if (kind == PixelForm::Cmyk) {
        return std::make_unique<ConvertedRows>(
            std::move(source), std::move(transform), PixelForm::Rgb);
    }
    if (!transform || changesNothing(transform.get(), channelsOf(kind)))
        return source;
    return std::make_unique<ConvertedRows>(std::move(source), std::move(transform), kind);
}

QByteArray displayP3Profile()
{
    const cmsCIExyY white{0.3127, 0.3290, 1};
    const cmsCIExyYTRIPLE primaries{{0.680, 0.320, 1}, {0.265, 0.690, 1}, {0.150, 0.060, 1}};
    const Curve curve = sRgbCurve();
    const std::array<cmsToneCurve*, 3> curves{curve.get(), curve.get(), curve.get()};
    const Profile profile(cmsCreateRGBProfile(&white, &primaries, curves.data()));
    cmsUInt32Number size = 0;
    if (!profile || cmsSaveProfileToMem(profile.get(), nullptr, &size) == 0)
        return {};
    QByteArray bytes(static_cast<qsizetype>(size), Qt::Uninitialized);
    return cmsSaveProfileToMem(profile.get(), bytes.data(), &size) != 0 ? bytes : QByteArray();
}

} // namespace wainscot
