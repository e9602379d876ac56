using System.Globalization;
using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>Any answer as text: its fields as lines, its lists as tables. For the smaller documents.</summary>
internal sealed class DocumentSheet(Sheet sheet)
{
    private const int MostColumns = 6;

    /// <summary>The text of a JSON document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        new DocumentSheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        bool said = root.TryGetProperty("why", out _);
        foreach (var field in root.EnumerateObject().Where(f => !said || f.Name != "code")) Write(field.Name, field.Value);
    }

    private void Write(string name, JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Object) WriteObject(name, value);
        else if (IsList(value) && value.EnumerateArray().All(IsSaid)) WriteSaid(name, value);
        else if (IsList(value) && IsTable(value)) WriteTable(name, value);
        else if (IsList(value)) WriteRecords(name, value);
        else if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() > 0) sheet.Item(Label(name) + ":", Cell(name, value));
    }

    private void WriteObject(string name, JsonElement value)
    {
        sheet.Heading(Label(name));
        Write(value);
    }

    private static bool IsList(JsonElement value) =>
        value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0 && value[0].ValueKind == JsonValueKind.Object;

    // A table only where its rows are flat and few columns wide; else each row is a record of its own.
    private static bool IsTable(JsonElement rows) => rows.EnumerateArray()
        .All(r => r.EnumerateObject().Count() <= MostColumns && r.EnumerateObject().All(f => f.Value.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array)));

    /// <summary>A reason and nothing else: its code, perhaps its sentence.</summary>
    private static bool IsSaid(JsonElement row) => row.EnumerateObject().All(f => f.Name is "code" or "why") && row.TryGetProperty("code", out _);

    private void WriteSaid(string name, JsonElement rows)
    {
        sheet.Heading(Label(name));
        foreach (var row in rows.EnumerateArray())
            sheet.Item("-", row.TryGetProperty("why", out var why) ? why.GetString()! : Texts.Name(row.GetProperty("code").GetString()!));
    }

    /// <summary>Rows less likely than this stand in the JSON only.</summary>
    private const double LeastLikely = 0.001;

    private static bool Negligible(JsonElement row) => row.TryGetProperty("probability", out var p) && p.ValueKind == JsonValueKind.Number && p.GetDouble() < LeastLikely;

    private void WriteRecords(string name, JsonElement rows)
    {
        if (rows.EnumerateArray().All(r => r.TryGetProperty("log_odds", out _) && r.TryGetProperty("why", out _)))
        {
            WriteMoved(name, rows);
            return;
        }
        foreach (var row in rows.EnumerateArray())
        {
            sheet.Heading(Label(name));
            Write(row);
        }
    }

    /// <summary>What each reading moved: its log odds and its sentence; the numbers of the sentence stand in the JSON.</summary>
    private void WriteMoved(string name, JsonElement rows)
    {
        sheet.Heading(Label(name));
        foreach (var row in rows.EnumerateArray())
            sheet.Item($"{row.GetProperty("id").GetString()} {row.GetProperty("log_odds").GetDouble().ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture)}", row.GetProperty("why").GetString()!);
    }

    private void WriteTable(string name, JsonElement rows)
    {
        sheet.Heading(Label(name));
        var fields = rows.EnumerateArray().SelectMany(r => r.EnumerateObject()).Select(f => f.Name).Distinct(StringComparer.Ordinal).ToList();
        if (fields.Count > 1) fields.Remove("code");
        var table = Columns.Of([.. fields.Select(f => (IsNumber(rows[0], f) ? ">" : "") + Label(f))]);
        foreach (var row in rows.EnumerateArray().Where(r => !Negligible(r))) table.Row([.. fields.Select(f => row.TryGetProperty(f, out var v) ? Cell(f, v) : "")]);
        sheet.Write(table);
    }

    private static bool IsNumber(JsonElement row, string field) => row.TryGetProperty(field, out var v) && v.ValueKind == JsonValueKind.Number;

    // A chance is shown as the other sheets show it.
    private string Cell(string name, JsonElement value) => value.ValueKind == JsonValueKind.Number && IsChance(name) ? Shows.Percent(value.GetDouble())
        : name == "mm" && value.ValueKind == JsonValueKind.Number && value.GetDouble() == 0 ? sheet.T("none") : Cell(value);

    private static bool IsChance(string name) => name is "before" or "after" || name.Contains("probability", StringComparison.Ordinal);

    private string Cell(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Number => Shows.ThreeFigures(value.GetDouble()),
        JsonValueKind.String => value.GetString()!.Replace('_', ' '),
        JsonValueKind.Array => string.Join(", ", value.EnumerateArray().Select(Cell)),
        JsonValueKind.Object => string.Join(", ", value.EnumerateObject().Where(f => f.Name != "code").Select(f => $"{Label(f.Name)} {Cell(f.Name, f.Value)}")),
        JsonValueKind.True => sheet.T("yes"),
        JsonValueKind.False => sheet.T("no"),
        _ => sheet.T("none"),
    };

    // "tension_n" reads "tension, N"; the unit is the last part of a name.
    private static string Label(string name)
    {
        foreach (var (ending, unit) in Units)
        {
            if (name.EndsWith(ending, StringComparison.Ordinal)) return $"{name[..^ending.Length].Replace('_', ' ')}, {unit}";
        }
        return name.Replace('_', ' ');
    }

    private static readonly (string Ending, string Unit)[] Units =
    [
        ("_n_per_mm", "N/mm"), ("_nmm2", "Nmm²"), ("_nmm", "Nmm"), ("_mm2", "mm²"), ("_mm", "mm"), ("_mpa", "MPa"), ("_kn", "kN"), ("_n", "N"), ("_kg", "kg"),
    ];
}
