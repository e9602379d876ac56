using System.Buffers.Binary;
using System.Text;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>A photo of a wall: made small, without the place where it was taken, and laid under the drawing by two points.</summary>
public class PhotoTests(Chromium chromium, PublishedApp app)
{
    private const int WidePx = 2400, HighPx = 1800, MostPx = 1600;

    // The bay of the demo house.
    private const double WallWidthMm = 3600, WallHeightMm = 2500;

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

    private const string Marks = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const all = open.result.transaction('photos').objectStore('photos').getAll();
            all.onsuccess = () => resolve(all.result[0].marks);
          };
        })
        """;

    // How far each marked point of the photo lies from its place on the drawing, px of the screen.
    private const string Off = """
        ({ marks, wide, high }) => {
          const wall = document.querySelector('.under .drawing .edge').getBoundingClientRect(), photo = document.querySelector('.under .photo image').getScreenCTM();
          return marks.split(';').flatMap(mark => {
            const [x, y, mm, up] = mark.split(',').map(Number), at = new DOMPoint(x, y).matrixTransform(photo);
            return [at.x - (wall.left + wall.width * mm / wide), at.y - (wall.bottom - wall.height * up / high)];
          });
        }
        """;

    [Fact]
    public async Task A_photo_is_kept_small_and_without_the_place_where_it_was_taken()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay", 360);
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

    /// <summary>By touch and numbers the first time, by numbers alone the second: neither needs a pointer.</summary>
    [Fact]
    public async Task Two_marked_points_lay_it_under_the_drawing()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay", 1280);
        await PutIn(visit.Page, await Picture(visit.Page));
        await visit.Page.Locator(".marking").ClickAsync(new() { Position = await Part(visit.Page, 0.25, 0.75) });
        await Place(visit.Page, 1000, 500);
        await Field(visit.Page, "Across the picture").FillAsync("75");
        await Field(visit.Page, "Down the picture").FillAsync("75");
        await Place(visit.Page, 3000, 500);
        Near(["400,900,1000,500", "1200,900,3000,500"], (await visit.Page.EvaluateAsync<string>(Marks)).Split(';'), 4);
        // Each point as it was marked lies on its place of the wall as drawn, to a pixel of the screen, across and up.
        double[] off = await visit.Page.EvaluateAsync<double[]>(Off, new { marks = await visit.Page.EvaluateAsync<string>(Marks), wide = WallWidthMm, high = WallHeightMm });
        Assert.Equal(4, off.Length);
        Assert.All(off, o => Assert.InRange(o, -1, 1));
    }

    private static void Near(string[] expected, string[] marks, double tolerance)
    {
        Assert.Equal(expected.Length, marks.Length);
        foreach (var (e, m) in expected.Zip(marks))
            Assert.True(e.Split(',').Zip(m.Split(',')).All(p => Math.Abs(Number(p.First) - Number(p.Second)) <= tolerance), $"{m} is not near {e}");
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static async Task PutIn(IPage page, byte[] jpeg)
    {
        await page.Locator("details.photos > summary").ClickAsync();
        await page.Locator("#photo-of-wall").SetInputFilesAsync(new FilePayload { Name = "wall.jpg", MimeType = "image/jpeg", Buffer = jpeg });
        await Assertions.Expect(page.Locator(".marking")).ToHaveCountAsync(1);
    }

    private static ILocator Field(IPage page, string label) => page.Locator($".photos label.field:has(> span:text-is('{label}')) input");

    private static async Task Place(IPage page, int x, int y)
    {
        await Field(page, "From the left").FillAsync(x.ToString(System.Globalization.CultureInfo.InvariantCulture));
        await Field(page, "Up").FillAsync(y.ToString(System.Globalization.CultureInfo.InvariantCulture));
        await page.Keyboard.PressAsync("Tab");
        await page.Locator(".photos button.do").ClickAsync();
    }

    private static async Task<Position> Part(IPage page, double across, double down)
    {
        await page.Locator(".marking").ScrollIntoViewIfNeededAsync();
        // The picture stands in the middle of the element that shows it.
        var box = (await page.Locator(".marking").BoundingBoxAsync())!;
        var picture = (await page.Locator(".marking image").BoundingBoxAsync())!;
        return new() { X = (float)(picture.X - box.X + (picture.Width * across)), Y = (float)(picture.Y - box.Y + (picture.Height * down)) };
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
