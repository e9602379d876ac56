using System.Text.Json;
using Pattress.Actions;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Plans;

/// <summary>Writes reasons as code and sentence in a job's units and English.</summary>
internal sealed class PlanWords(Settings settings)
{
    public string Name(string id) => Texts.Name(id, settings);

    /// <summary><c>code</c> and <c>why</c> into the open object.</summary>
    public void Write(Utf8JsonWriter json, Reason reason)
    {
        json.WriteString("code", reason.Code);
        json.WriteString("why", Texts.Sentence(reason, settings));
    }

    public void Write(Utf8JsonWriter json, Assumption assumption)
    {
        json.WriteString("code", assumption.Code);
        json.WriteString("why", Texts.Sentence(assumption.Code, assumption.Values, settings));
        json.WriteString("source", assumption.Source);
    }
}
