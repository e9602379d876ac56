using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Pattress.Tests.Faults;

/// <summary>Changes a job as a slip of the hand, a worn-out device or a foe would. It knows the structure: most changes leave a job that can be planned.</summary>
internal sealed class Mutator(int seed)
{
    private static readonly double[] Extremes = [0, -1, 1, 0.001, -0.0, 1e-300, 1e6, 1e15, 1e308, -1e308, int.MaxValue, 20_000, 2.5];
    private static readonly string[] Units = ["mm", "cm", "m", "in", "ft"];
    private static readonly string[] WrongTexts = ["5 kg", "NaN", "∞", "2,4 m", "", "0x10", "1/0 in", "--5 mm", "yes", "\ud83d\ude00"];

    private static readonly ILookup<string, string> Words = SmallJobs.All.SelectMany(Below)
        .Where(n => n.Parent is JsonObject && n.GetValueKind() == JsonValueKind.String).ToLookup(n => n.GetPropertyName(), n => n.GetValue<string>());

    private readonly Random _random = new(seed);

    /// <summary>The text of a mutant of one of the small jobs.</summary>
    public string Next()
    {
        var job = SmallJobs.All[_random.Next(SmallJobs.All.Count)].DeepClone();
        int changes = 1 + _random.Next(3);
        bool wild = _random.Next(100) < 30;
        for (int i = 0; i < changes; i++) Change(Pick(job), wild && i == 0);
        string text = job.ToJsonString();
        return wild && _random.Next(12) == 0 ? Broken(text) : text;
    }

    // A random leaf or branch, leaves being likelier.
    private JsonNode Pick(JsonNode root)
    {
        var all = Below(root).ToList();
        return all[_random.Next(all.Count)];
    }

    private static IEnumerable<JsonNode> Below(JsonNode node) => node switch
    {
        JsonObject o => o.Where(p => p.Value is not null).SelectMany(p => Below(p.Value!).Append(p.Value!)),
        JsonArray a => a.Where(n => n is not null).SelectMany(n => Below(n!).Append(n!)),
        _ => [],
    };

    private void Change(JsonNode node, bool wild)
    {
        if (node.Parent is null) return;
        if (wild) Spoil(node);
        else if (node is JsonValue value && value.GetValueKind() == JsonValueKind.Number) Nudge(value);
        else if (node is JsonValue) SwapWord(node);
        else if (node is JsonArray list) Shuffle(list);
        else DropOptional(node.AsObject());
    }

    private void Nudge(JsonNode node)
    {
        double number = double.Parse(node.ToJsonString(), CultureInfo.InvariantCulture);
        double changed = _random.Next(4) switch
        {
            0 => number + _random.Next(-3, 4),
            1 => number * (0.8 + (0.4 * _random.NextDouble())),
            2 => Math.Round(number),
            _ => number * (1 + (1e-6 * _random.NextDouble())),
        };
        bool isLength = node.Parent is JsonArray || (node.GetPropertyName().EndsWith("_mm", StringComparison.Ordinal));
        if (isLength && _random.Next(3) == 0) Put(node, JsonValue.Create(WithUnit(changed)));
        else Put(node, JsonValue.Create(IsWhole(node) ? Math.Round(changed) : changed));
    }

    private string WithUnit(double mm)
    {
        string unit = Units[_random.Next(Units.Length)];
        double size = unit switch { "cm" => 10, "m" => 1000, "in" => 25.4, "ft" => 304.8, _ => 1 };
        return (mm / size).ToString("0.######", CultureInfo.InvariantCulture) + " " + unit;
    }

    private static bool IsWhole(JsonNode node) =>
        node.Parent is JsonObject && node.GetPropertyName() is "count" or "hooks" or "holes" or "shelves" or "panels" or "year_built" or "service_class" or "bracket_count" or "pattress_job";

    // Another word that some sample uses for the same field; ids stay as they are.
    private void SwapWord(JsonNode node)
    {
        if (node.Parent is not JsonObject parent) return;
        string name = node.GetPropertyName();
        if (name is "id" or "wall" or "kind" or "what" or "fixing" or "strip") return;
        var words = Words[name].ToList();
        if (words.Count > 0) parent[name] = words[_random.Next(words.Count)];
    }

    // Readings and things in another order, or one fewer.
    private void Shuffle(JsonArray list)
    {
        if (list.Count == 0 || list[0] is JsonValue) return;
        var item = list[_random.Next(list.Count)]!;
        list.Remove(item);
        if (_random.Next(2) == 0) list.Insert(_random.Next(list.Count + 1), item);
    }

    private void DropOptional(JsonObject thing)
    {
        string[] optional = [.. thing.Select(p => p.Key).Where(k => k is "readings" or "openings" or "services" or "zones" or "condition" or "settings" or "stock" or "brackets" or "name" or "thickness_mm" or "toe_strip" or "removable" or "swarf" or "diameter_mm" or "fabric" or "lining" or "load" or "house")];
        if (optional.Length > 0) thing.Remove(optional[_random.Next(optional.Length)]);
    }

    private void Spoil(JsonNode node)
    {
        switch (_random.Next(7))
        {
            case 0: Put(node, JsonValue.Create(Extremes[_random.Next(Extremes.Length)])); break;
            case 1: Put(node, JsonValue.Create(WrongTexts[_random.Next(WrongTexts.Length)])); break;
            case 2: Put(node, null); break;
            case 3: Put(node, new JsonArray()); break;
            case 4 when node.Parent is JsonObject o: o.Remove(node.GetPropertyName()); break;
            case 5 when node.Parent is JsonArray a: a.Add(node.DeepClone()); break;
            case 6 when node.Parent is JsonObject o: o["surplus"] = node.DeepClone(); break;
            default: Put(node, JsonValue.Create(true)); break;
        }
    }

    private string Broken(string text)
    {
        int at = _random.Next(text.Length);
        return _random.Next(3) switch
        {
            0 => text[..at],
            1 => text.Remove(at, 1),
            _ => text.Insert(at, "NaN"),
        };
    }

    private static void Put(JsonNode node, JsonNode? other)
    {
        if (node.Parent is JsonObject parent) parent[node.GetPropertyName()] = other;
        else if (node.Parent is JsonArray list) list[node.GetElementIndex()] = other;
    }
}
