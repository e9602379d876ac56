using System.Buffers.Binary;
using System.Text;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>A photo of a wall: made small, and without the place where it was taken.</summary>
public class PhotoTests(Chromium chromium, PublishedApp app)
{
    private const int WidePx = 2400, HighPx = 1800, MostPx = 1600;

    private const string Kept = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const all = open.result.transaction('photos').objectStore('photos').getAll();
            all.onsuccess = async () => resolve(all.result.length ? btoa(String.fromCharCode(...new Uint8Array(await all.result[0].blob.arrayBuffer()))) : '');
          };
        })
        """;

    [Fact]
    public async Task A_photo_is_kept_small_and_without_the_place_where_it_was_taken()
    {
        await using var visit = await Visit.To(chromium, app, "/wall/bay", 360);
        byte[] taken = WithPlace(await Picture(visit.Page));
        Assert.True(Holds(taken, "Exif") && Holds(taken, "53.4808"), "the photo that is put in must hold a place");
        await PutIn(visit.Page, taken);
        byte[] kept = Convert.FromBase64String(await visit.Page.EvaluateAsync<string>(Kept));
        // Only the segments that a picture needs: none of an application (Exif and XMP are APP1) but the colours that the browser
        // itself writes (APP2, ICC.1 annex B.4), no comment. ITU-T T.81, table B.1.
        Assert.Equal([], Segments(kept).Where(s => s.Marker is (>= 0xE1 and <= 0xEF) or 0xFE && !s.Begins.StartsWith("ICC_PROFILE", StringComparison.Ordinal)));
        Assert.False(Holds(kept, "Exif") || Holds(kept, "GPS") || Holds(kept, "53.4808"));
        var (wide, high) = Size(kept);
        Assert.Equal((MostPx, MostPx * HighPx / WidePx), (wide, high));
        Assert.DoesNotContain(visit.Requests, r => r.Contains("photo", StringComparison.OrdinalIgnoreCase));
    }

    private static async Task PutIn(IPage page, byte[] jpeg)
    {
        await page.Locator("details.photos > summary").ClickAsync();
        await page.Locator("#photo-of-wall").SetInputFilesAsync(new FilePayload { Name = "wall.jpg", MimeType = "image/jpeg", Buffer = jpeg });
        await Assertions.Expect(page.Locator(".marking")).ToHaveCountAsync(1);
    }

    private static async Task<byte[]> Picture(IPage page) => Convert.FromBase64String((await page.EvaluateAsync<string>(
        "([w, h]) => { const c = document.createElement('canvas'); c.width = w; c.height = h; const g = c.getContext('2d'); g.fillStyle = '#888'; g.fillRect(0, 0, w, h); g.fillStyle = '#222'; g.fillRect(w / 4, h / 4, w / 2, h / 2); return c.toDataURL('image/jpeg'); }",
        new[] { WidePx, HighPx }))["data:image/jpeg;base64,".Length..]);

    /// <summary>Puts an Exif segment with a GPS directory (Exif 2.3, 4.6.6) and a comment behind the start of a picture.</summary>
    private static byte[] WithPlace(byte[] jpeg)
    {
        // TIFF, little-endian: one entry 0x8825 that points to a directory with the latitude's letter and its three fractions.
        byte[] tiff = new byte[26 + 30 + 24];
        "II*\0"u8.CopyTo(tiff);
        BinaryPrimitives.WriteInt32LittleEndian(tiff.AsSpan(4), 8);
        BinaryPrimitives.WriteInt16LittleEndian(tiff.AsSpan(8), 1);
        Entry(tiff.AsSpan(10), 0x8825, 4, 1, 26);
        BinaryPrimitives.WriteInt16LittleEndian(tiff.AsSpan(26), 2);
        Entry(tiff.AsSpan(28), 1, 2, 2, 'N');
        Entry(tiff.AsSpan(40), 2, 5, 3, 56);
        foreach (var (value, i) in new[] { 53, 1, 28, 1, 51, 1 }.Select((v, i) => (v, i))) BinaryPrimitives.WriteInt32LittleEndian(tiff.AsSpan(56 + (4 * i)), value);
        return [.. jpeg[..2], .. Segment(0xE1, [.. "Exif\0\0"u8, .. tiff]), .. Segment(0xFE, "taken at 53.4808, -2.2426"u8.ToArray()), .. jpeg[2..]];
    }

    private static void Entry(Span<byte> at, int tag, short type, int count, int value)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(at, (ushort)tag);
        BinaryPrimitives.WriteInt16LittleEndian(at[2..], type);
        BinaryPrimitives.WriteInt32LittleEndian(at[4..], count);
        BinaryPrimitives.WriteInt32LittleEndian(at[8..], value);
    }

    private static byte[] Segment(byte marker, byte[] body) => [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body];

    /// <summary>The segments before the picture's own data: their markers, and how they begin.</summary>
    private static List<(int Marker, string Begins)> Segments(byte[] jpeg)
    {
        var markers = new List<(int, string)>();
        for (int at = 2; jpeg[at + 1] != 0xDA; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))
        {
            Assert.Equal(0xFF, jpeg[at]);
            markers.Add((jpeg[at + 1], Encoding.Latin1.GetString(jpeg, at + 4, 12)));
        }

        Assert.NotEmpty(markers);
        return markers;
    }

    /// <summary>Width and height of the frame header (SOF0 or SOF2).</summary>
    private static (int Wide, int High) Size(byte[] jpeg)
    {
        int at = 2;
        while (jpeg[at + 1] is not (0xC0 or 0xC2)) at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2));
        return (BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 7)), BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 5)));
    }

    private static bool Holds(byte[] file, string text) => file.AsSpan().IndexOf(Encoding.ASCII.GetBytes(text)) >= 0;
}
