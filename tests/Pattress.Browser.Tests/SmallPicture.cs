using System.Buffers.Binary;
using System.IO.Compression;

namespace Pattress.Browser.Tests;

/// <summary>A picture of a page as a PNG of sixteen colours, a fifth of its size: drawings and letters need no more.</summary>
internal static class SmallPicture
{
    private const int Colours = 16, Greyscale = 0, Palette = 3;

    /// <param name="png">As the browser takes it: 8 bits a channel, not interlaced.</param>
    public static byte[] Of(byte[] png)
    {
        var (wide, high, pixels) = Read(png);
        int[] palette = Chosen(pixels);
        var nearest = new Dictionary<int, byte>();
        byte Index(int pixel)
        {
            if (!nearest.TryGetValue(pixel, out byte index)) nearest[pixel] = index = (byte)Enumerable.Range(0, palette.Length).MinBy(i => Apart(pixel, palette[i]));
            return index;
        }

        int stride = (wide + 1) / 2;
        byte[] rows = new byte[(stride + 1) * high];
        for (int y = 0; y < high; y++)
            for (int x = 0; x < wide; x++)
                rows[(y * (stride + 1)) + 1 + (x / 2)] |= (byte)(Index(pixels[(y * wide) + x]) << (x % 2 == 0 ? 4 : 0));
        return Write(wide, high, palette, rows);
    }

    /// <summary>The commonest colour, then each time the one whose pixels would be furthest off: so a rare accent is kept.</summary>
    private static int[] Chosen(int[] pixels)
    {
        var counts = pixels.CountBy(p => p).OrderByDescending(p => p.Value).ThenBy(p => p.Key).Take(2000).ToList();
        var chosen = new List<int> { counts[0].Key };
        long[] off = [.. counts.Select(c => (long)Apart(c.Key, chosen[0]))];
        while (chosen.Count < Colours && chosen.Count < counts.Count)
        {
            int next = Enumerable.Range(0, counts.Count).MaxBy(i => off[i] * counts[i].Value);
            chosen.Add(counts[next].Key);
            for (int i = 0; i < off.Length; i++) off[i] = Math.Min(off[i], Apart(counts[i].Key, counts[next].Key));
        }

        return [.. chosen];
    }

    private static int Apart(int a, int b)
    {
        int red = (a >> 16) - (b >> 16), green = ((a >> 8) & 255) - ((b >> 8) & 255), blue = (a & 255) - (b & 255);
        return (red * red) + (green * green) + (blue * blue);
    }

    /// <summary>Pixels as 0xRRGGBB. PNG (ISO/IEC 15948), chunks and filters as in clauses 11 and 9.</summary>
    private static (int Wide, int High, int[] Pixels) Read(byte[] png)
    {
        int wide = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), high = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20));
        int channels = png[25] switch { 2 => 3, 6 => 4, Greyscale => 1, var kind => throw new NotSupportedException($"colour type {kind}") };
        using var packed = new MemoryStream();
        for (int at = 8, length; at < png.Length; at += 12 + length)
        {
            length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            if (png.AsSpan(at + 4, 4).SequenceEqual("IDAT"u8)) packed.Write(png, at + 8, length);
        }

        packed.Position = 0;
        using var rows = new ZLibStream(packed, CompressionMode.Decompress);
        int stride = wide * channels;
        byte[] above = new byte[stride], row = new byte[stride + 1];
        int[] pixels = new int[wide * high];
        for (int y = 0; y < high; y++)
        {
            rows.ReadExactly(row);
            Unfilter(row.AsSpan(1), above, row[0], channels);
            row.AsSpan(1).CopyTo(above);
            for (int x = 0; x < wide; x++)
            {
                var p = above.AsSpan(x * channels);
                pixels[(y * wide) + x] = channels == 1 ? p[0] * 0x010101 : (p[0] << 16) | (p[1] << 8) | p[2];
            }
        }

        return (wide, high, pixels);
    }

    private static void Unfilter(Span<byte> row, ReadOnlySpan<byte> above, byte filter, int channels)
    {
        for (int i = 0; i < row.Length; i++)
        {
            int left = i < channels ? 0 : row[i - channels], up = above[i], corner = i < channels ? 0 : above[i - channels];
            row[i] += (byte)(filter switch { 1 => left, 2 => up, 3 => (left + up) / 2, 4 => Paeth(left, up, corner), _ => 0 });
        }
    }

    private static int Paeth(int left, int up, int corner)
    {
        int p = left + up - corner, a = Math.Abs(p - left), b = Math.Abs(p - up), c = Math.Abs(p - corner);
        return a <= b && a <= c ? left : b <= c ? up : corner;
    }

    private static byte[] Write(int wide, int high, int[] palette, byte[] rows)
    {
        byte[] head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, wide);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), high);
        (head[8], head[9]) = (4, Palette);
        using var packed = new MemoryStream();
        using (var pack = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) pack.Write(rows);
        return [.. "\u0089PNG\r\n\u001a\n".Select(c => (byte)c), .. Chunk("IHDR"u8, head), .. Chunk("PLTE"u8, [.. palette.SelectMany(c => new[] { (byte)(c >> 16), (byte)(c >> 8), (byte)c })]), .. Chunk("IDAT"u8, packed.ToArray()), .. Chunk("IEND"u8, [])];
    }

    private static byte[] Chunk(ReadOnlySpan<byte> type, byte[] body)
    {
        byte[] chunk = new byte[body.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, body.Length);
        type.CopyTo(chunk.AsSpan(4));
        body.CopyTo(chunk, 8);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(body.Length + 8), Crc(chunk.AsSpan(4, body.Length + 4)));
        return chunk;
    }

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte b in bytes)
        {
            crc ^= b;
            for (int bit = 0; bit < 8; bit++) crc = (crc >> 1) ^ (0xEDB88320 & (0 - (crc & 1)));
        }

        return ~crc;
    }
}
