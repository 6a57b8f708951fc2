// Package photo turns a picture from a phone into one worth keeping.
//
// What for: a picture of a bed, kept for ten years, shown on a slow phone, and
// given away in an export without saying where the garden is.
//
// Method: the header is read first, and sizes that would fill the memory are
// refused before anything is decoded. The picture is turned upright by its
// orientation tag, scaled down, and written again as JPEG. Nothing of the file
// but its points is kept, so place, owner and camera are gone.
// Sources: Exif 2.32 (CIPA DC-008), tag 0x0112; ITU-T T.81 for the segments of
// a JPEG file; W3C, "Portable Network Graphics".
//
// Conventions: sizes are in pixels, longer side first capped at Long.
//
// Range: JPEG up to 40 million pixels (20 when progressive, which needs more
// memory to decode), PNG up to 20 (10 with 16 bits a channel). Accuracy: JPEG
// quality 85; colours are taken as sRGB.
//
// Left out: HEIC, WebP, GIF, SVG and moving pictures; colour profiles.
package photo
