using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>Collects every problem of a document, up to 100; more than that and the last entry says so.</summary>
public sealed class ProblemList
{
    /// <summary>Most problems that are reported at once.</summary>
    public const int Most = 100;

    private readonly List<Problem> _problems = [];

    /// <summary>What was found so far, in the document's order.</summary>
    public IReadOnlyList<Problem> Problems => _problems;

    public bool IsEmpty => _problems.Count == 0;

    /// <summary>Adds a problem with the text that was found.</summary>
    public void Add(string code, JsonPath path, string value, string allowed)
    {
        if (_problems.Count < Most) _problems.Add(new Problem(code, path.ToString(), Snippet.Of(value), allowed));
        else if (_problems.Count == Most) _problems.Add(new Problem("more_problems", "$", "", $"at most {Most} problems are reported at once"));
    }

    internal void Add(Problem problem) => _problems.Add(problem);

    internal void Add(string code, JsonPath path, JsonElement value, string allowed) => Add(code, path, Snippet.Of(value), allowed);
}
