namespace Pattress.Cli.Input;

/// <summary>The words behind <c>pattress</c>, sorted: a command, what it is about, and switches.</summary>
/// <param name="Values">In order, without the command and the switches.</param>
/// <param name="Given">What stands behind a switch that takes something, e.g. the file behind <c>--svg</c>; empty when nothing does.</param>
internal sealed record Arguments(string Command, IReadOnlyList<string> Values, IReadOnlyList<string> Switches, IReadOnlyDictionary<string, string> Given)
{
    /// <summary>Switches behind which a file or folder stands.</summary>
    private static readonly string[] Takers = ["--svg", "--report", "--out", "--paper", OwnTrialsFile.Switch];

    public bool Has(string name) => Switches.Contains(name, StringComparer.Ordinal);

    /// <summary>Sorts the words; <c>-</c> alone is a value (standard input), and behind <c>--</c> everything is.</summary>
    public static Arguments Of(IReadOnlyList<string> words)
    {
        var values = new List<string>();
        var switches = new List<string>();
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        bool onlyValues = false;
        string taker = "";
        foreach (string word in words)
        {
            if (taker.Length > 0) (given[taker], taker) = (word, "");
            else if (!onlyValues && word == "--") onlyValues = true;
            else if (!onlyValues && Takers.Contains(word))
            {
                switches.Add(taker = word);
                given[taker] = "";
            }
            else if (!onlyValues && word.Length > 1 && word[0] == '-') switches.Add(word == "-h" ? "--help" : word);
            else values.Add(word);
        }
        return new(values.Count > 0 ? values[0] : "", [.. values.Skip(1)], switches, given);
    }
}
