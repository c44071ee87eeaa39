"""Photos without their words: what is left is the same picture to another reader, Qt's."""

from __future__ import annotations

import struct
import zlib

import pytest
from PySide6.QtCore import QBuffer, QByteArray, QIODevice
from PySide6.QtGui import QColor, QImage, QImageIOHandler, QImageReader

from app.service.photo_data import Damaged, bare

PLACE = b"52.2297N 21.0122E"  # what must not leave
TURNED = QImageIOHandler.Transformation.TransformationRotate90


def picture(kind: str) -> bytes:
    image = QImage(20, 10, QImage.Format.Format_RGB32)
    image.fill(QColor("#c8b482"))
    kept = QByteArray()
    buffer = QBuffer(kept)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    assert image.save(buffer, kind)
    return kept.data()


def exif() -> bytes:
    """Return Exif that turns the picture (orientation 6) and tells a place, "MM" as in TIFF."""
    entries = struct.pack(">HHIHH", 0x0112, 3, 1, 6, 0)
    entries += struct.pack(">HHII", 0x010E, 2, len(PLACE), 8 + 2 + 24 + 4)
    return struct.pack(">2sHIH", b"MM", 42, 8, 2) + entries + b"\0\0\0\0" + PLACE


def telling_jpeg() -> bytes:
    data = picture("jpg")
    body = b"Exif\0\0" + exif()
    app1 = b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body
    comment = b"\xff\xfe" + struct.pack(">H", len(PLACE) + 2) + PLACE
    xmp = b"http://ns.adobe.com/xap/1.0/\0" + PLACE
    app1x = b"\xff\xe1" + struct.pack(">H", len(xmp) + 2) + xmp
    return data[:2] + app1 + app1x + comment + data[2:] + telling_tail()


def telling_tail() -> bytes:
    """Return another picture behind the first, as telephones put it there."""
    return b"\xff\xd8" + PLACE + b"\xff\xd9"


def telling_png() -> bytes:
    data = picture("png")
    words = b"tEXt" + b"Comment\0" + PLACE
    chunk = struct.pack(">I", len(words) - 4) + words + struct.pack(">I", zlib.crc32(words))
    return data[:33] + chunk + data[33:]


def telling_webp(simple: bytes) -> bytes:
    """Return an extended WebP (RFC 9649, section 2.7) with an EXIF chunk."""
    extended = b"VP8X" + struct.pack("<I", 10) + bytes([0b1000, 0, 0, 0]) + b"\x13\0\0\x09\0\0"
    words = exif() + b"\0" * (len(exif()) % 2)
    chunk = b"EXIF" + struct.pack("<I", len(exif())) + words
    body = b"WEBP" + extended + simple[12:] + chunk
    return b"RIFF" + struct.pack("<I", len(body)) + body


def read(data: bytes) -> tuple[QImage, QImageIOHandler.Transformation]:
    buffer = QBuffer()
    buffer.setData(QByteArray(data))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    turned = reader.transformation()
    image = reader.read()
    assert not image.isNull(), reader.errorString()
    return image, turned


def test_a_jpeg_tells_no_place_but_how_it_is_turned() -> None:
    data = telling_jpeg()
    assert PLACE in data
    assert read(data)[1] == TURNED
    left = bare(data, "jpg")
    assert PLACE not in left
    assert read(left)[1] == TURNED
    assert read(left)[0] == read(picture("jpg"))[0]
    assert bare(left, "jpg") == left


def test_a_png_tells_no_words() -> None:
    assert PLACE in telling_png()
    left = bare(telling_png(), "png")
    assert left == picture("png") or PLACE not in left
    assert read(left)[0] == read(picture("png"))[0]


def test_a_webp_tells_no_place() -> None:
    if b"webp" not in [
        bytes(image_format.data()) for image_format in QImageReader.supportedImageFormats()
    ]:
        pytest.skip("this Qt reads no WebP")
    simple = picture("webp")
    data = telling_webp(simple)
    assert PLACE in data
    left = bare(data, "webp")
    assert PLACE not in left
    assert left[20] == 0  # no flag says that there is Exif
    assert read(left)[0] == read(simple)[0]


@pytest.mark.parametrize("kind", ["jpg", "png"])
def test_a_damaged_photo_is_told_apart(kind: str) -> None:
    data = picture(kind)
    for length in range(8 if kind == "png" else 3, len(data) - 2, 7):
        with pytest.raises(Damaged):
            bare(data[:length], kind)


def test_pictures_without_words_stay_as_they_are() -> None:
    assert bare(picture("bmp"), "bmp") == picture("bmp")
