using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>Finds where a text stops being JSON, so that the message can name the place.</summary>
internal static class SyntaxFault
{
    /// <summary>One place on the way down: a field's name, or the number of an item.</summary>
    private sealed class Level(bool isList)
    {
        public bool IsList { get; } = isList;

        public string? Name { get; set; }

        public int Index { get; set; }
    }

    /// <summary>The one problem of a text that the parser refused.</summary>
    public static Problem Find(ReadOnlySpan<byte> json, int maxDepth)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = maxDepth + 1 });
        var levels = new Stack<Level>();
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= maxDepth) return new Problem("too_deep", PathOf(levels), "", $"at most {maxDepth} levels");
                Follow(ref reader, levels);
            }
        }
        catch (JsonException fault) { return At(json, fault, PathOf(levels)); }
        return new Problem("not_json", "$", "", "a JSON document");
    }

    private static void Follow(ref Utf8JsonReader reader, Stack<Level> levels)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName: levels.Peek().Name = Encoding.UTF8.GetString(reader.ValueSpan); return;
            case JsonTokenType.StartObject or JsonTokenType.StartArray: levels.Push(new Level(reader.TokenType == JsonTokenType.StartArray)); return;
            case JsonTokenType.EndObject or JsonTokenType.EndArray: levels.Pop(); break;
        }
        if (levels.TryPeek(out var level)) { level.Index++; level.Name = null; }
    }

    private static string PathOf(Stack<Level> levels)
    {
        var path = JsonPath.Root;
        foreach (var level in levels.Reverse())
        {
            if (level.IsList) path = path.Item(level.Index);
            else if (level.Name is not null) path = path.Field(level.Name);
        }
        return path.ToString();
    }

    private static Problem At(ReadOnlySpan<byte> json, JsonException fault, string path)
    {
        var rest = RestOfLine(json, fault.LineNumber ?? 0, fault.BytePositionInLine ?? 0);
        string word = Word(rest);
        string place = string.Create(CultureInfo.InvariantCulture, $"JSON; line {(fault.LineNumber ?? 0) + 1}, byte {(fault.BytePositionInLine ?? 0) + 1}");
        return IsNotANumber(word)
            ? new Problem("not_a_number", path, Snippet.Of(word.Split(',', '}', ']', ' ')[0].Trim()), "a finite number")
            : new Problem("not_json", path, word.Length == 0 ? "the end" : Snippet.Of(word), place);
    }

    private static string Word(ReadOnlySpan<byte> rest) => Encoding.UTF8.GetString(rest[..Math.Min(rest.Length, 40)]);

    private static bool IsNotANumber(string word) =>
        word.TrimStart('-').StartsWith("NaN", StringComparison.Ordinal) || word.TrimStart('-').StartsWith("Infinity", StringComparison.Ordinal);

    private static ReadOnlySpan<byte> RestOfLine(ReadOnlySpan<byte> json, long line, long column)
    {
        for (; line > 0; line--) json = json[(json.IndexOf((byte)'\n') + 1)..];
        int end = json.IndexOf((byte)'\n'), at = (int)Math.Min(column, json.Length);
        if (end >= at) json = json[..end];
        // The parser points behind the sign of "-Infinity".
        return json[(at > 0 && at < json.Length && json[at - 1] == '-' ? at - 1 : at)..];
    }
}
