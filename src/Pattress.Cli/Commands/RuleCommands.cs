using Pattress.Cli.Printing;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>The published rules: the list, and one with its working.</summary>
internal static class RuleCommands
{
    public static int List(Call call) =>
        Answering.Finish(call, RuleQuestions.List(string.Join(' ', call.Arguments.Values)), json => RuleSheet.List(json, call.Terminal));

    public static int One(Call call)
    {
        var inputs = new Dictionary<string, string>(StringComparer.Ordinal);
        var problems = call.Arguments.Values.Skip(1).Select(word => Take(word, inputs)).OfType<Problem>().ToList();
        return problems.Count > 0 ? Answering.Refuse(call, problems)
            : Answering.Finish(call, RuleQuestions.Evaluate(call.File, inputs), json => RuleSheet.One(json, call.Terminal));
    }

    private static Problem? Take(string word, Dictionary<string, string> inputs)
    {
        int equals = word.IndexOf('=');
        if (equals <= 0) return new("wrong_words", "pattress rule", word, "name=value");
        return inputs.TryAdd(word[..equals], word[(equals + 1)..]) ? null : new("duplicate_field", "$." + word[..equals], word, "each input once");
    }
}
