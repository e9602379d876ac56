using System.Security;
using System.Text;

namespace Pattress.Cli.Input;

/// <summary>Reads the files of the command line, bounded, in UTF-8.</summary>
internal static class Documents
{
    /// <summary>Above this nothing is read; the door of each document has a lower bound of its own.</summary>
    public const int MaxBytes = 4_000_000;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The text of a file, or of standard input for <c>-</c>.</summary>
    public static Outcome<string> Read(string path, Terminal terminal)
    {
        try
        {
            using var file = Open(path, terminal);
            return Text(path, file);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refused("file_missing", path, "", "a file that is there, or - for standard input");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or SecurityException)
        {
            return Refused("file_unreadable", path, "", "a file that can be read");
        }
    }

    /// <summary>Opens a file, or standard input for <c>-</c>.</summary>
    public static Stream Open(string path, Terminal terminal) => path == "-" ? terminal.In : File.OpenRead(path);

    /// <summary>Writes a text, making its folder; what went wrong, or nothing.</summary>
    public static IReadOnlyList<Problem> Write(string path, string text) => Write(path, new UTF8Encoding(false).GetBytes(text));

    /// <inheritdoc cref="Write(string, string)"/>
    public static IReadOnlyList<Problem> Write(string path, byte[] bytes)
    {
        try
        {
            if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder) Directory.CreateDirectory(folder);
            File.WriteAllBytes(path, bytes);
            return [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or SecurityException)
        {
            return [new Problem("file_unwritable", path, "", "a place that can be written to")];
        }
    }

    private static Outcome<string> Text(string path, Stream file)
    {
        byte[] bytes = new byte[MaxBytes + 1];
        int count = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (count > MaxBytes) return Refused("too_large", path, $"over {MaxBytes} bytes", $"at most {MaxBytes} bytes");
        int start = bytes.AsSpan(0, count).StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        try { return Outcome<string>.Of(Strict.GetString(bytes, start, count - start)); }
        catch (DecoderFallbackException) { return Refused("not_utf8", path, "", "text in UTF-8"); }
    }

    private static Outcome<string> Refused(string code, string path, string value, string allowed) =>
        Outcome<string>.Refused(new Problem(code, path, value, allowed));
}
