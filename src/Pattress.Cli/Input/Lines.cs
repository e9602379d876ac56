using System.Text;

namespace Pattress.Cli.Input;

/// <summary>Lines of a stream, each bounded; a longer one is cut and seen by the door as too large.</summary>
internal static class Lines
{
    public static IEnumerable<string> Of(Stream stream, int most = Documents.MaxBytes)
    {
        using var reader = new StreamReader(stream, new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true);
        var line = new StringBuilder();
        for (int c = reader.Read(); c >= 0; c = reader.Read())
        {
            if (c != '\n') { if (line.Length < most) line.Append((char)c); continue; }
            yield return Take(line);
        }
        if (line.Length > 0) yield return Take(line);
    }

    private static string Take(StringBuilder line)
    {
        string text = line.ToString();
        line.Clear();
        return text.EndsWith('\r') ? text[..^1] : text;
    }
}
