using System.Globalization;
using Pattress.Working;

namespace Pattress.Tests.Working;

/// <summary>Reads a set formula back into one line, by what a reader sees of it: fractions, roots, powers, fences. Numbers only.</summary>
internal static class SetBack
{
    internal static double Value(Setting setting) => FormulaReader.Evaluate(Line(setting), []);

    internal static string Line(Setting setting) => setting switch
    {
        SetText { Text: "π" } => "PI",
        SetText { Text: "ln" } => "Log",
        SetText t => char.IsLetter(t.Text[0]) ? char.ToUpper(t.Text[0], CultureInfo.InvariantCulture) + t.Text[1..] : t.Text.Replace('−', '-'),
        SetSign s => s.Sign switch { "·" => "*", "−" => "-", "≤" => "<=", "≥" => ">=", "=" => "==", " and " => "&&", " or " => "||", "; " => ",", var o => o },
        SetRow r => Row(r.Parts),
        SetScript { Of: SetText { Text: "e" }, Above: { } above } => $"Exp({Line(above)})",
        SetScript { Above: { } above } s => $"Pow({Line(s.Of)}, {Line(above)})",
        SetFraction f => $"(({Line(f.Over)}) / ({Line(f.Under)}))",
        SetRoot r => $"{(r.Index.Length == 0 ? "Sqrt" : "Cbrt")}({Line(r.Of)})",
        SetFence { Left: "(" } f => $"({Line(f.Of)})",
        SetFence f => $"{f.Left switch { "|" => "Abs", "⌈" => "Ceiling", _ => "Floor" }}({Line(f.Of)})",
        _ => throw new ArgumentException(setting.ToString()),
    };

    // The least or the most of several, two by two.
    private static string Row(IReadOnlyList<Setting> parts)
    {
        string line = "";
        for (int i = 0; i < parts.Count; i++)
            if (parts[i] is SetText { Text: "min" or "max" } name && parts[i + 1] is SetFence { Of: SetRow list })
            {
                line += Of(Line(name), Arguments(list));
                i++;
            }
            else line += Line(parts[i]);
        return line;
    }

    private static string Of(string name, List<string> of) => of.Count == 1 ? of[0] : $"{name}({of[0]}, {Of(name, of[1..])})";

    private static List<string> Arguments(SetRow list)
    {
        var arguments = new List<List<Setting>> { new() };
        foreach (var part in list.Parts)
            if (part is SetSign { Sign: "; " }) arguments.Add([]);
            else arguments[^1].Add(part);
        return [.. arguments.Select(a => Row(a))];
    }
}
