using System.Security.Cryptography;
using System.Text;

namespace Pattress.Pdf.Press;

/// <summary>
/// PDFsharp draws ids at random: of the file, of its metadata, of each font's subset. Here they are made from the file's own
/// bytes, of the same length, so that the same paper is the same file and no offset moves.
/// </summary>
internal static class Fixed
{
    private static readonly byte[][] FontNames = [[.. "/BaseFont/"u8], [.. "/FontName/"u8]];

    public static byte[] Ids(byte[] file, string salt)
    {
        Blank(file);
        string hash = Convert.ToHexString(SHA256.HashData([.. Encoding.UTF8.GetBytes(salt), .. file]));
        Fonts(file);
        Guids(file, "uuid:"u8, Guid(hash));
        Guids(file, "/ID[<"u8, hash[..32]);
        Guids(file, "><"u8, hash[..32], after: "/ID[<"u8);
        return file;
    }

    // What is random is the same before the file is hashed.
    private static void Blank(byte[] file)
    {
        Fonts(file);
        Guids(file, "uuid:"u8, new string('0', 36));
        Guids(file, "/ID[<"u8, new string('0', 32));
        Guids(file, "><"u8, new string('0', 32), after: "/ID[<"u8);
    }

    private static string Guid(string hash) => $"{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..32]}".ToLowerInvariant();

    private static void Guids(byte[] file, ReadOnlySpan<byte> before, string id, ReadOnlySpan<byte> after = default)
    {
        byte[] text = Encoding.ASCII.GetBytes(id);
        int from = after.IsEmpty ? 0 : file.AsSpan().LastIndexOf(after);
        for (int at = Next(file, before, from); at >= 0; at = Next(file, before, at)) text.CopyTo(file, at);
    }

    /// <summary>Where the next text behind <paramref name="before"/> begins, or -1.</summary>
    private static int Next(byte[] file, ReadOnlySpan<byte> before, int from)
    {
        int found = file.AsSpan(from).IndexOf(before);
        return found < 0 ? -1 : from + found + before.Length;
    }

    // A subset's tag is six letters before a plus; one and the same face has one and the same tag.
    private static void Fonts(byte[] file)
    {
        foreach (byte[] name in FontNames)
            for (int at = Next(file, name, 0); at >= 0; at = Next(file, name, at))
                if (file[at + 6] == (byte)'+') "PATTRE"u8.CopyTo(file.AsSpan(at));
    }
}
