using System.Globalization;

namespace Pattress.Jobs.Text;

/// <summary>Where in a document something stands, as a fitter says it: "Bay, reading 6 (tap), where it is" for <c>$.walls[0].readings[5].at_mm</c>.</summary>
public static class Places
{
    private const string Listed = "place.one.", Named = "place.", FieldName = "field.";

    /// <summary>A JSON path in plain words; what is no path, such as the line of a table, is left as it is.</summary>
    /// <param name="job">The job it speaks of, for the names of its walls and things; null where it is not read.</param>
    public static string Of(string path, Job? job, Settings settings)
    {
        if (!path.StartsWith('$')) return path;
        var steps = Steps(path);
        if (steps.Count == 0) return Texts.Name(Named + "document", settings);
        var said = steps.Select((step, i) => Said(step, i > 0 ? steps[i - 1] : null, job, settings));
        return string.Join(", ", said.Where(s => s.Length > 0));
    }

    /// <summary>A field and, where it is a list, which entry of it, from 0.</summary>
    private readonly record struct Step(string Name, int? Index);

    private static string Said(Step step, Step? parent, Job? job, Settings settings)
    {
        if (step.Index is not { } index) return Words(step.Name, settings);
        if (OwnName(step.Name, index, job) is { Length: > 0 } own) return own;
        if (PartOf(step.Name, index, parent, job, settings) is { } part) return part;
        string one = Texts.Has(Listed + step.Name) ? Texts.Sentence(Listed + step.Name, [Pattress.Said.Count(index + 1)], settings) : Words(step.Name, settings);
        return KindOf(step.Name, index, parent, job) is { Length: > 0 } kind ? $"{one} ({Texts.Name(kind, settings)})" : one;
    }

    private static string Words(string name, Settings settings) =>
        Texts.Has(Named + name) ? Texts.Name(Named + name, settings) : Texts.Has(FieldName + name) ? Small(Texts.Name(FieldName + name, settings)) : $"\"{name}\"";

    // Within a sentence no label begins with a capital.
    private static string Small(string label) => label.Length > 1 && char.IsUpper(label[1]) ? label : char.ToLowerInvariant(label[0]) + label[1..];

    private static string? OwnName(string list, int index, Job? job) => list switch
    {
        "walls" when index < job?.Walls.Count => job.Walls[index].Name,
        "fixtures" when index < job?.Fixtures.Count => job.Fixtures[index].Name,
        _ => null,
    };

    /// <summary>What an entry of a wall's list is, as the id of its name; a thing without a name is called by its kind.</summary>
    private static string? KindOf(string list, int index, Step? parent, Job? job)
    {
        if (list == "fixtures" && index < job?.Fixtures.Count) return "fixture." + job.Fixtures[index].What;
        if (parent is not { Name: "walls", Index: { } at } || job is null || at >= job.Walls.Count) return null;
        var wall = job.Walls[at];
        return list switch
        {
            "readings" when index < wall.Readings.Count => "reading." + wall.Readings[index].Kind,
            _ => null,
        };
    }

    /// <summary>A window, a socket: by what it is, and which of its kind where the wall has several.</summary>
    private static string? PartOf(string list, int index, Step? parent, Job? job, Settings settings)
    {
        if (parent is not { Name: "walls", Index: { } at } || job is null || at >= job.Walls.Count) return null;
        var wall = job.Walls[at];
        List<string> ids = list switch
        {
            "openings" => [.. wall.Openings.Select(o => "opening." + o.Kind)],
            "services" => [.. wall.Services.Select(s => "service." + s.Kind)],
            "zones" => [.. wall.Zones.Select(z => "zone." + z.Kind)],
            _ => [],
        };
        if (index >= ids.Count) return null;
        string name = Texts.Name(ids[index], settings);
        return ids.Count(i => i == ids[index]) == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name} {ids.Take(index + 1).Count(i => i == ids[index])}");
    }

    // "$.walls[0].at_mm" and "$.walls[0]['odd name']": names, each with the first number behind it.
    private static List<Step> Steps(string path)
    {
        var steps = new List<Step>();
        for (int at = 1; at < path.Length;)
        {
            bool quoted = path.AsSpan(at).StartsWith("['", StringComparison.Ordinal);
            int from = quoted ? at + 2 : at + 1, end = quoted ? path.IndexOf("']", from, StringComparison.Ordinal) : path.AsSpan(from).IndexOfAny('.', '[') is >= 0 and var n ? from + n : path.Length;
            if (!quoted && path[at] == '[') end = path.IndexOf(']', from);
            if (end < 0) break;
            string part = path[from..end];
            if (quoted || path[at] == '.') steps.Add(new(part, null));
            else if (steps.Count > 0 && steps[^1].Index is null && int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int index)) steps[^1] = steps[^1] with { Index = index };
            at = quoted ? end + 2 : path[at] == '[' ? end + 1 : end;
        }

        return steps;
    }

    /// <summary>Every "[x, y]" in a text as the drawings say a place: so far from the left, so far up; of two corners from where to where.</summary>
    public static string WithPoints(string text, Settings settings)
    {
        if (text.Split("] to [") is [var low, var high] && Numbers(low.TrimStart('[')) is [var left, var lower] && Numbers(high.TrimEnd(']')) is [var right, var upper])
            return Texts.Sentence("draw_extent", [Pattress.Said.Length(left), Pattress.Said.Length(right), Pattress.Said.Length(lower), Pattress.Said.Length(upper)], settings);
        int open = text.IndexOf('['), close = open < 0 ? -1 : text.IndexOf(']', open);
        if (close < 0) return text;
        string said = Numbers(text[(open + 1)..close]) is [var x, var y]
            ? Texts.Sentence("draw_place", [Pattress.Said.Length(x), Pattress.Said.Length(y)], settings) : text[open..(close + 1)];
        return text[..open] + said + WithPoints(text[(close + 1)..], settings);
    }

    // None where one of them is no number.
    private static double[] Numbers(string text)
    {
        string[] parts = text.Split(',');
        var numbers = new double[parts.Length];
        for (int i = 0; i < parts.Length; i++)
            if (!double.TryParse(parts[i], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out numbers[i])) return [];
        return numbers;
    }
}
