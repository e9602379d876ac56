using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;
using Pattress.Quantities;
using Pattress.Strength;
using Pattress.Working;

namespace Pattress.Server;

/// <summary>The published rules as documents: the list, and one rule with its working.</summary>
public static class RuleQuestions
{
    /// <summary>Rules whose id, clause or title holds the text; all for none.</summary>
    public static Reply List(string text) => Reply.Of(Written.As(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("rules");
        foreach (var rule in RuleBook.Search(text)) WriteRule(json, rule);
        json.WriteEndArray();
        json.WriteEndObject();
    }));

    /// <summary>One rule from named texts, e.g. <c>d</c> = <c>5 mm</c>.</summary>
    public static Reply Evaluate(string id, IReadOnlyDictionary<string, string> inputs)
    {
        var trace = new Trace();
        var answer = RuleBook.Evaluate(id, inputs, trace);
        if (answer.Value is not { } value) return Reply.Refused(answer.Problems);
        return value.Result.Why is { } why ? Reply.NotCovered(Refusal(id, why)) : Reply.Of(Written.As(json => WriteAnswer(json, value, trace)));
    }

    private static string Refusal(string id, NotCovered why) => Written.As(json =>
    {
        json.WriteStartObject();
        json.WriteString("id", id);
        json.WriteString("not_covered", Texts.Sentence(why.Reason, new Settings()));
        json.WriteString("code", why.Code);
        json.WriteString("clause", why.Clause);
        json.WriteEndObject();
    });

    private static void WriteRule(Utf8JsonWriter json, Rule rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("title", rule.Title);
        json.WriteString("document", rule.Document);
        json.WriteString("edition", rule.Edition);
        json.WriteString("clause", rule.Clause);
        json.WriteString("unit", rule.Unit);
        json.WriteStartArray("inputs");
        foreach (var input in rule.Parameters) WriteInput(json, input);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteInput(Utf8JsonWriter json, Parameter input)
    {
        json.WriteStartObject();
        json.WriteString("symbol", input.Symbol);
        json.WriteString("allowed", input.Allowed);
        if (input.Words.Count > 0) WriteWords(json, input.Words);
        else WriteRange(json, input);
        if (input.Default is { } value) json.WriteNumber("default", value);
        json.WriteEndObject();
    }

    private static void WriteWords(Utf8JsonWriter json, IReadOnlyList<string> words)
    {
        json.WriteStartArray("words");
        foreach (string word in words) json.WriteStringValue(word);
        json.WriteEndArray();
    }

    private static void WriteRange(Utf8JsonWriter json, Parameter input)
    {
        json.WriteNumber("from", input.Min);
        json.WriteNumber("to", input.Max);
        json.WriteString("unit", QuantityText.OwnUnit(input.Dimension));
    }

    private static void WriteAnswer(Utf8JsonWriter json, RuleAnswer answer, Trace trace)
    {
        json.WriteStartObject();
        json.WriteString("id", answer.Rule.Id);
        json.WriteNumber("value", answer.Result.Value);
        json.WriteString("unit", answer.Rule.Unit);
        json.WriteString("clause", answer.Rule.Clause);
        json.WriteStartArray("working");
        foreach (var step in trace.Steps)
        {
            json.WriteStartObject();
            StepJson.Write(json, step);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
