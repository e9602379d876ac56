using System.Text.Json;

namespace Pattress.Cli.Printing;

/// <summary>Reasons of several things: what all of them share is said once, at the end.</summary>
internal sealed class SharedReasons
{
    private readonly List<string> _shared = [];

    public SharedReasons(IReadOnlyList<JsonElement> items)
    {
        // A thing with a single reason is one of which nothing is planned.
        var all = items.Select(Of).Where(r => r.Count > 1).ToList();
        if (all.Count > 1) _shared.AddRange(all[0].Where(r => all.TrueForAll(other => other.Contains(r))));
    }

    /// <summary>What only this one has.</summary>
    public IEnumerable<string> Own(JsonElement item) => Of(item).Where(r => !_shared.Contains(r));

    public void Write(Sheet sheet)
    {
        if (_shared.Count == 0) return;
        sheet.Heading(sheet.T("of_all"));
        foreach (string reason in _shared) sheet.Item("-", reason);
    }

    private static List<string> Of(JsonElement item) => [.. item.List("reasons").Select(r => r.Why())];
}
