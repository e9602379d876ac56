using System.Collections;
using System.IO.Compression;
using System.Text;
using Pattress.Jobs;
using QRCoder;

namespace Pattress.Web.Desks;

/// <summary>
/// A job as a square code: an address whose part behind the # is the packed job. That part never leaves the device that
/// reads it, and any phone's camera can read it.
/// </summary>
internal static class JobCodes
{
    /// <summary>Beyond this the squares get too small for a phone's camera (assumed).</summary>
    private const int MostCharacters = 1800;

    private const int MostBytes = 2_000_000;

    /// <summary>Rows of the code with its quiet border, or null when the job does not fit.</summary>
    public static IReadOnlyList<BitArray>? Squares(string address, Job job)
    {
        string text = address + "#" + Packed(JobWriter.Write(job));
        if (text.Length > MostCharacters) return null;
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.L);
        return [.. code.ModuleMatrix];
    }

    /// <summary>The document of a packed text, or null when it is none.</summary>
    public static string? Read(string packed)
    {
        try
        {
            byte[] bytes = Convert.FromBase64String(packed.Replace('-', '+').Replace('_', '/') + new string('=', (4 - packed.Length % 4) % 4));
            using var unpacked = new DeflateStream(new MemoryStream(bytes), CompressionMode.Decompress);
            using var text = new MemoryStream();
            byte[] part = new byte[8192];
            for (int n; (n = unpacked.Read(part)) > 0 && text.Length <= MostBytes;) text.Write(part, 0, n);
            return text.Length > MostBytes ? null : Encoding.UTF8.GetString(text.ToArray());
        }
        catch (Exception e) when (e is FormatException or InvalidDataException)
        {
            return null;
        }
    }

    /// <summary>A document packed for an address.</summary>
    public static string Packed(string document)
    {
        using var bytes = new MemoryStream();
        using (var packing = new DeflateStream(bytes, CompressionLevel.SmallestSize, leaveOpen: true)) packing.Write(Encoding.UTF8.GetBytes(Short(document)));
        return Convert.ToBase64String(bytes.ToArray()).TrimEnd('=').Replace('+', '-').Replace('/', '_');
    }

    // Line breaks and indents between fields; a line feed never stands inside a JSON text.
    private static string Short(string document) => string.Concat(document.Split('\n').Select(l => l.TrimStart()));
}
