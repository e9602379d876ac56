using System.Buffers.Binary;
using System.Text;

namespace Pattress.Pdf.Fonts;

/// <summary>What the layout asks of a font: how wide a letter is, and whether it is there. Read from the file's own tables.</summary>
internal sealed class FontTable
{
    private readonly byte[] _file;
    private readonly int _cmap, _hmtx, _wideCount;
    private readonly double _unitsPerEm;
    private readonly Dictionary<char, (int Glyph, double Width)> _known = [];

    public FontTable(byte[] file)
    {
        _file = file;
        _unitsPerEm = UInt16(Table("head") + 18);
        _wideCount = UInt16(Table("hhea") + 34);
        _hmtx = Table("hmtx");
        _cmap = Format4(Table("cmap"));
    }

    /// <summary>True when the font has a shape for the letter.</summary>
    public bool Has(char letter) => Known(letter).Glyph != 0;

    /// <summary>Width of a text at a size, in the size's own unit.</summary>
    public double Width(string text, double size)
    {
        double sum = 0;
        foreach (char letter in text) sum += Known(letter).Width;
        return sum * size;
    }

    private (int Glyph, double Width) Known(char letter)
    {
        if (_known.TryGetValue(letter, out var known)) return known;
        int glyph = Glyph(letter);
        return _known[letter] = (glyph, UInt16(_hmtx + 4 * Math.Min(glyph, _wideCount - 1)) / _unitsPerEm);
    }

    // OpenType, cmap format 4: segments of letters that follow each other.
    private int Glyph(char letter)
    {
        int count = UInt16(_cmap + 6) / 2, ends = _cmap + 14, starts = ends + 2 * count + 2, deltas = starts + 2 * count, offsets = deltas + 2 * count;
        int i = 0;
        while (i < count && UInt16(ends + 2 * i) < letter) i++;
        if (i == count || UInt16(starts + 2 * i) > letter) return 0;
        int offset = UInt16(offsets + 2 * i), delta = UInt16(deltas + 2 * i);
        if (offset == 0) return (letter + delta) & 0xFFFF;
        int glyph = UInt16(offsets + 2 * i + offset + 2 * (letter - UInt16(starts + 2 * i)));
        return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
    }

    private int Format4(int cmap)
    {
        for (int i = 0; i < UInt16(cmap + 2); i++)
        {
            int table = cmap + (int)UInt32(cmap + 4 + 8 * i + 4);
            if (UInt16(table) == 4) return table;
        }
        throw new InvalidDataException("the font has no table of letters that this reads");
    }

    private int Table(string tag)
    {
        for (int i = 0; i < UInt16(4); i++)
            if (Encoding.ASCII.GetString(_file, 12 + 16 * i, 4) == tag) return (int)UInt32(12 + 16 * i + 8);
        throw new InvalidDataException($"the font has no table '{tag}'");
    }

    private int UInt16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_file.AsSpan(at));

    private uint UInt32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_file.AsSpan(at));
}
