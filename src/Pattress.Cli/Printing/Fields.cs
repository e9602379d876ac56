using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>Fields of an answer's document as words.</summary>
internal static class Fields
{
    public static string Text(this JsonElement of, string name) => of.GetProperty(name).GetString()!;

    public static double Number(this JsonElement of, string name) => of.GetProperty(name).GetDouble();

    public static double? Maybe(this JsonElement of, string name) => of.TryGetProperty(name, out var v) && v.ValueKind == JsonValueKind.Number ? v.GetDouble() : null;

    public static IReadOnlyList<JsonElement> List(this JsonElement of, string name) => of.TryGetProperty(name, out var v) ? [.. v.EnumerateArray()] : [];

    public static string Why(this JsonElement said) => said.Text("why");

    public static string Percent(this JsonElement of, string name) => of.Maybe(name) is { } p ? Shows.Percent(p) : "-";

    /// <summary>The units and English that a document says it is in.</summary>
    public static Settings Settings(this JsonElement document) => new()
    {
        Units = document.TryGetProperty("units", out var units) ? units.GetString()! : "metric",
        English = document.TryGetProperty("english", out var english) ? english.GetString()! : "british",
    };

    public static string Force(this JsonElement of, string name, Settings settings) => of.Maybe(name) is { } n ? Shows.Force(n, settings) : "-";

}
